package frillbook.bias;

import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.straight.Lane;
import frillbook.strip.Join;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A bias strip cut in two by the disc in its corner, counted from the cut line that touches the
 * disc inward to the disc's centre.
 *
 * <p>Lengths hold for a disc pushed right into the corner. Pushed {@code slack} further along the
 * edges' sum, line and disc move together and each piece grows by slack/√2.
 *
 * @param besideNo from 1
 * @param besideOk whether the strip still lies outside the disc's centre
 * @param besideLine where its outer cut line meets both edges, from the corner
 * @param besideInner distance of its inner cut line from the corner, at right angles to the line
 * @param besideClosest the same for the place where the left piece comes closest to the rim
 * @param besideRight length of the piece towards one edge
 * @param besideLeft length of the piece towards the other; with slanting ends it is the shorter,
 *     since its end must clear the rim all the way, and comes closest where the rim runs at 45°
 */
public record BesideDisc(
    int besideNo,
    boolean besideOk,
    double besideLine,
    double besideInner,
    double besideClosest,
    double besideRight,
    double besideLeft) {
  /** Strips considered on each side of a disc. */
  public static final int MOST = 6;

  private static final double ROOT2 = Math.sqrt(2);

  public static List<BesideDisc> all(Pieces pieces, Join join) {
    return IntStream.rangeClosed(1, MOST).mapToObj(n -> at(n, pieces, join)).toList();
  }

  private static BesideDisc at(int number, Pieces pieces, Join join) {
    double width = pieces.stripWidth();
    double radius = pieces.discRadius();
    double line = BiasSetting.reachOfDisc(pieces) - (number - 1) * width * ROOT2;
    double inner = line / ROOT2 - width;
    double centre = radius * ROOT2;
    double right = inner - Lane.halfChord(radius, inner - centre);
    double closest = Math.min(Math.max(centre + radius / ROOT2, inner), inner + width);
    double slanted = 2 * inner - closest - Lane.halfChord(radius, closest - centre);
    boolean ok = Rounding.settle(inner - centre) >= 0;
    double left = join.diagonal() ? slanted : right;
    return new BesideDisc(number, ok, line, inner, closest, right, left);
  }

  /** {@code base} lengthened for {@code slack}, or 0 where the piece is of no use. */
  double piece(double base, double least, double shorter, double slack) {
    boolean usable =
        besideOk
            && besideLine + slack <= shorter + Rounding.TINY
            && base + slack / ROOT2 >= least - Rounding.TINY;
    return usable ? base + slack / ROOT2 : 0;
  }
}
