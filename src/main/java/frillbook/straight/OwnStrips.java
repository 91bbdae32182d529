package frillbook.straight;

import frillbook.cutting.CushionStrips;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How long lengthwise strips are where every cushion has its own, all alike.
 *
 * @param fewest strips of a joined strip, so that none is longer than the longest that is cut
 * @param ownTries from that number on, one more each; none where one strip is joined for all
 * @param alike length of those that cost least, the fewest of them; the usable width where one
 *     strip is joined for all
 */
public record OwnStrips(int fewest, List<OwnTry> ownTries, double alike) {
  /** Numbers of strips tried. */
  static final int MOST = 20;

  public static OwnStrips of(Fabric fabric, Pieces pieces, Join join) {
    double net = CushionStrips.net(pieces, join, pieces.longestStrip());
    int fewest = Math.max(1, Rounding.up(pieces.netOfCushion(join) / net));
    if (!pieces.ownStrips()) {
      return new OwnStrips(fewest, List.of(), fabric.usableWidth());
    }
    DiscColumns columns = DiscColumns.of(pieces, fabric.usableWidth());
    List<OwnTry> tries =
        IntStream.range(0, MOST)
            .mapToObj(i -> OwnTry.of(fabric, pieces, join, columns, fewest + i))
            .toList();
    OwnTry best = tries.stream().min(Comparator.comparingDouble(OwnTry::ownCost)).orElseThrow();
    return new OwnStrips(fewest, tries, best.ownStrip());
  }

  /** The strips of one cushion. */
  CushionStrips cushion(Pieces pieces, Join join) {
    double net = CushionStrips.net(pieces, join, alike);
    int each = Math.max(1, Rounding.up(pieces.netOfCushion(join) / net));
    return CushionStrips.alike(each, alike);
  }
}
