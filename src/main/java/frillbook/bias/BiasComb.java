package frillbook.bias;

import frillbook.measure.Rounding;
import frillbook.strip.Join;

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
 * @param laneCount strips between the corners
 * @param far the same as {@code near}, from the far corner
 * @param nearSlack how far the near disc is pushed out of its corner, along the sum of both edges
 * @param farSlack the same for the far disc
 * @param nearShort strips in the near corner that are shorter than full
 * @param farShort the same in the far corner
 * @param nearEdge lengths of these near strips, measured along the fabric's edge
 * @param farEdge the same of the far ones
 * @param edge lengths of all strips between the corners, measured along the fabric's edge
 * @param fullNet what a full strip adds to the run
 * @param fits whether the discs and a strip worth joining lie on the rectangle
 * @param over net length beyond the need; below 0 the rectangle is too small
 */
public record BiasComb(
    double longer,
    double shorter,
    double waist,
    double near,
    int laneCount,
    double far,
    double nearSlack,
    double farSlack,
    int nearShort,
    int farShort,
    double nearEdge,
    double farEdge,
    double edge,
    double fullNet,
    boolean fits,
    double over) {
  private static final double ROOT2 = Math.sqrt(2);

  /** Lays strips on {@code length} × the fabric's usable width, {@code discs} in the corners. */
  static BiasComb of(BiasCutting cutting, double length, int discs) {
    double width = cutting.fabric().usableWidth();
    double longer = Math.max(length, width);
    double shorter = Math.min(length, width);
    double waist = shorter - cutting.setting().squareEnds();
    double step = cutting.lineStep();
    double latest = waist - BiasCutting.MOST * step;
    double near = Math.max(cutting.reach(discs >= 1), latest);
    double farLeast = Math.max(cutting.reach(discs >= 2), latest);
    int laneCount = Math.max(0, Rounding.down((longer + shorter - near - farLeast) / step));
    double far = longer + shorter - near - laneCount * step;
    int nearShort = shortened(laneCount, waist - near, step);
    int farShort = shortened(laneCount, waist - far, step);
    double nearEdge = arithmetic(near, nearShort, step);
    double farEdge = arithmetic(far, farShort, step);
    double edge = nearEdge + farEdge + (laneCount - nearShort - farShort) * waist;
    BiasComb bare =
        new BiasComb(
            longer,
            shorter,
            waist,
            near,
            laneCount,
            far,
            near - cutting.reach(discs >= 1),
            far - cutting.reach(discs >= 2),
            nearShort,
            farShort,
            nearEdge,
            farEdge,
            edge,
            cutting.join().net(ROOT2 * waist),
            false,
            0);
    return bare.judged(cutting, discs);
  }

  /** The same, knowing whether it fits and how far it goes beyond the need. */
  private BiasComb judged(BiasCutting cutting, int discs) {
    boolean holds = holds(cutting, discs);
    double net = holds ? net(cutting, discs) : 0;
    double need = cutting.pieces().netNeeded(cutting.join(), fullStrip());
    return new BiasComb(
        longer,
        shorter,
        waist,
        near,
        laneCount,
        far,
        nearSlack,
        farSlack,
        nearShort,
        farShort,
        nearEdge,
        farEdge,
        edge,
        fullNet,
        holds,
        net - need);
  }

  private double net(BiasCutting cutting, int discs) {
    Join join = cutting.join();
    double strips = ROOT2 * edge * join.gain() - laneCount * join.loss();
    return strips + nearPieces(cutting, discs).beside() + farPieces(cutting, discs).beside();
  }

  BesidePieces nearPieces(BiasCutting cutting, int discs) {
    return BesidePieces.of(cutting, shorter, nearSlack, discs >= 1);
  }

  BesidePieces farPieces(BiasCutting cutting, int discs) {
    return BesidePieces.of(cutting, shorter, farSlack, discs >= 2);
  }

  private boolean holds(BiasCutting cutting, int discs) {
    return farSlack >= -Rounding.TINY
        && fullStrip() >= cutting.least() - Rounding.TINY
        && (discs < 1 || fits(nearSlack, shorter, cutting))
        && (discs < 2 || fits(farSlack, shorter, cutting));
  }

  /** Whether a disc pushed {@code slack} out of its corner still lies on the fabric. */
  private static boolean fits(double slack, double shorter, BiasCutting cutting) {
    return slack / 2 <= shorter - cutting.pieces().discDiameter() + Rounding.TINY;
  }

  private static int shortened(int laneCount, double depth, double step) {
    return Math.min(laneCount, Math.max(0, Rounding.up(depth / step)));
  }

  private static double arithmetic(double first, int count, double step) {
    return count * first + step * count * (count - 1) / 2;
  }

  public double fullStrip() {
    return ROOT2 * waist;
  }

  /** Cut length of the strip whose inner line lies at {@code line} from the corner nearer to it. */
  double strip(double line, double lineStep) {
    double otherLine = longer + shorter - line - lineStep;
    return ROOT2 * (Math.min(line, waist) + Math.min(otherLine, waist) - waist);
  }
}
