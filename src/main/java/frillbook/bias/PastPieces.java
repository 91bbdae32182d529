package frillbook.bias;

import frillbook.measure.Rounding;
import java.util.function.Predicate;

/**
 * What the strips that are cut past a line of discs add to the run.
 *
 * @param room from the first cut line to the one through the far end of the long edge that these
 *     strips begin at: further strips begin at the far short edge and are shorter
 * @param whole net length of those that begin at the long edge
 * @param shortened net length of the others
 */
public record PastPieces(double room, double whole, double shortened) {

  static PastPieces of(BiasCutting cutting, double longer, double shorter, double least) {
    BiasSetting setting = cutting.setting();
    double room = longer - shorter + setting.lineRim() + setting.squareEnds();
    Predicate<PastDisc> reaches = strip -> strip.pastReach() <= room + Rounding.TINY;
    double whole = net(cutting, shorter, least, room, reaches);
    double shortened = net(cutting, shorter, least, room, reaches.negate());
    return new PastPieces(room, whole, shortened);
  }

  /** Of both. */
  double both() {
    return whole + shortened;
  }

  private static double net(
      BiasCutting cutting, double shorter, double least, double room, Predicate<PastDisc> some) {
    return cutting.past().stream()
        .filter(some)
        .mapToDouble(strip -> cutting.pastPiece(strip, shorter, room, least))
        .filter(length -> length > 0)
        .map(cutting::worth)
        .sum();
  }
}
