package frillbook.cutting;

import frillbook.measure.Rounding;

/**
 * One way to lay bias strips on a rectangle: cut lines at 45°, one strip width apart, from the near
 * right-angled corner to the far one, a disc in either corner or none.
 *
 * <p>Where a cut line meets the edges is measured from the corner. A strip whose inner line lies at
 * c from the near corner and whose outer line lies at e from the far one is √2·(min(c, w) + min(e,
 * w) − w) long, w being the waist: it grows through one corner, is √2·w across the middle and
 * shrinks through the other.
 *
 * @param longer longer side of the rectangle
 * @param shorter shorter side
 * @param waist the shorter side, less what square ends take
 * @param near inner line of the first strip
 * @param lanes strips between the corners
 * @param far the same as {@code near}, from the far corner
 * @param nearShort strips in the near corner that are shorter than full
 * @param farShort the same in the far corner
 * @param beside net length of the pieces beside the discs in the corners
 * @param over net length beyond the need; below 0 the rectangle is too small
 */
public record BiasComb(
    double longer,
    double shorter,
    double waist,
    double near,
    int lanes,
    double far,
    int nearShort,
    int farShort,
    double beside,
    double over) {
  private static final double ROOT2 = Math.sqrt(2);

  static BiasComb of(BiasCutting cutting, double length, int cornerDiscs) {
    double width = cutting.cloth().usableWidth();
    double longer = Math.max(length, width);
    double shorter = Math.min(length, width);
    double waist = shorter - cutting.squareEnds();
    double latest = waist - BiasCutting.MOST * cutting.lineStep();
    double near = Math.max(cutting.reach(cornerDiscs >= 1), latest);
    double farLeast = Math.max(cutting.reach(cornerDiscs >= 2), latest);
    double between = longer + shorter - near - farLeast;
    int lanes = Math.max(0, Rounding.down(between / cutting.lineStep()));
    double far = longer + shorter - near - lanes * cutting.lineStep();
    return new BiasComb(longer, shorter, waist, near, lanes, far, 0, 0, 0, 0)
        .counted(cutting, cornerDiscs);
  }

  private BiasComb counted(BiasCutting cutting, int cornerDiscs) {
    int nearCount = shorterThanFull(near, cutting.lineStep());
    int farCount = shorterThanFull(far, cutting.lineStep());
    double pieces =
        cornerDiscs == 0
            ? 0
            : cutting.besideNet(shorter, nearSlack(cutting, cornerDiscs))
                + (cornerDiscs < 2
                    ? 0
                    : cutting.besideNet(shorter, farSlack(cutting, cornerDiscs)));
    double total =
        fits(cutting, cornerDiscs) ? net(cutting, nearCount, farCount) + pieces : 0;
    double need = cutting.join().netNeeded(cutting.pieces(), fullStrip());
    return new BiasComb(
        longer, shorter, waist, near, lanes, far, nearCount, farCount, pieces, total - need);
  }

  private int shorterThanFull(double start, double step) {
    return Math.min(lanes, Math.max(0, Rounding.up((waist - start) / step)));
  }

  private double net(BiasCutting cutting, int nearCount, int farCount) {
    double corners =
        arithmetic(near, nearCount, cutting.lineStep())
            + arithmetic(far, farCount, cutting.lineStep());
    double edge = corners + (lanes - nearCount - farCount) * waist;
    return ROOT2 * edge * cutting.join().gain() - lanes * cutting.join().takeup();
  }

  private static double arithmetic(double first, int count, double step) {
    return count * first + step * count * (count - 1) / 2;
  }

  private boolean fits(BiasCutting cutting, int cornerDiscs) {
    double disc = cutting.pieces().discDiameter();
    boolean nearFits =
        cornerDiscs < 1 || disc + nearSlack(cutting, cornerDiscs) / 2 <= shorter + Rounding.TINY;
    boolean farFits =
        cornerDiscs < 2 || disc + farSlack(cutting, cornerDiscs) / 2 <= shorter + Rounding.TINY;
    return nearFits
        && farFits
        && fullStrip() >= cutting.least() - Rounding.TINY
        && farSlack(cutting, cornerDiscs) >= -Rounding.TINY;
  }

  /** How far the near disc is pushed out of its corner, along the sum of both edges. */
  double nearSlack(BiasCutting cutting, int cornerDiscs) {
    return near - cutting.reach(cornerDiscs >= 1);
  }

  double farSlack(BiasCutting cutting, int cornerDiscs) {
    return far - cutting.reach(cornerDiscs >= 2);
  }

  double fullStrip() {
    return ROOT2 * waist;
  }

  /** Cut length of the strip whose inner line lies at {@code line} from the corner nearer to it. */
  double strip(double line, double lineStep) {
    double otherLine = longer + shorter - line - lineStep;
    return ROOT2 * (Math.min(line, waist) + Math.min(otherLine, waist) - waist);
  }
}
