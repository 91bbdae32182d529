package frillbook.bias;

import frillbook.cutting.CushionStrips;
import frillbook.cutting.Pieces;
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
 * @param nearShort strips in the near corner that are shorter than full
 * @param farShort the same in the far corner
 * @param nearEdge lengths of these near strips, measured along the fabric's edge
 * @param farEdge the same of the far ones
 * @param pairs strips of the near corner that are joined to as many of the far one: both have their
 *     ends on two edges of the fabric, and their slants fit without turning; none with square ends
 * @param edge lengths of all strips between the corners but those past a line of discs, measured
 *     along the fabric's edge; a strip of a pair counts as the mean of its sides
 * @param fullNet what a full strip adds to the run
 * @param each strips of one cushion, where each has its own
 * @param last cut length of the last of them
 * @param fits whether the discs and a strip worth joining lie on the rectangle
 * @param served shorter strips that may be a cushion's last; -1 where it does not fit
 * @param over net length beyond the need; below 0 the rectangle is too small
 */
public record BiasComb(
    double longer,
    double shorter,
    double waist,
    double near,
    int laneCount,
    double far,
    int nearShort,
    int farShort,
    double nearEdge,
    double farEdge,
    int pairs,
    double edge,
    double fullNet,
    int each,
    double last,
    boolean fits,
    int served,
    double over) {
  private static final double ROOT2 = Math.sqrt(2);

  /** Lays strips on {@code length} × the fabric's usable width, {@code discs} in the corners. */
  static BiasComb of(BiasCutting cutting, double length, int discs) {
    BiasComb bare = bare(cutting, length, BiasWay.corners(cutting, discs));
    double beside = bare.nearPieces(cutting, discs).both() + bare.farPieces(cutting, discs).both();
    return bare.judged(cutting, bare.holds(cutting, discs), bare.laneCount, beside);
  }

  /** The same with the discs in a line along a long edge. */
  static BiasComb ofLine(BiasCutting cutting, double length) {
    BiasComb bare = bare(cutting, length, BiasWay.line(cutting));
    int rows = cutting.setting().lineRows();
    double past = bare.pastPieces(cutting).both();
    return bare.judged(cutting, bare.holdsLine(cutting), bare.laneCount - rows, past);
  }

  private static BiasComb bare(BiasCutting cutting, double length, BiasWay way) {
    double width = cutting.fabric().usableWidth();
    double longer = Math.max(length, width);
    double shorter = Math.min(length, width);
    double waist = shorter - cutting.setting().squareEnds();
    double step = cutting.lineStep();
    double grown = way.lined() ? cutting.firstPast(shorter) : waist;
    double near = way.near(waist, grown, step);
    int growing = Math.max(0, Rounding.up((grown - near) / step));
    int before = way.lined() ? growing + way.rows() : 0;
    double room = longer + shorter - near - way.farLeast(waist, step);
    int laneCount = Math.max(before, Rounding.down(room / step));
    double far = longer + shorter - near - laneCount * step;
    int nearShort = Math.min(laneCount, growing);
    int shrinking = Math.max(0, Rounding.up((waist - far) / step));
    int farShort = Math.min(laneCount - before, shrinking);
    boolean paired = cutting.join().diagonal() && !cutting.pieces().ownStrips();
    int pairs = paired ? pairs(nearShort, farShort, waist, near, far, step) : 0;
    CushionStrips cushion = CushionStrips.of(cutting.pieces(), cutting.join(), ROOT2 * waist);
    double nearEdge = arithmetic(near, nearShort, step);
    double farEdge = arithmetic(far, farShort, step);
    int full = laneCount - nearShort - farShort - way.rows();
    return new BiasComb(
        longer,
        shorter,
        waist,
        near,
        laneCount,
        far,
        nearShort,
        farShort,
        nearEdge,
        farEdge,
        pairs,
        nearEdge + farEdge + full * waist + pairs * step,
        cutting.join().net(ROOT2 * waist),
        cushion.each(),
        cushion.last(),
        false,
        0,
        0);
  }

  /** The same, knowing whether it fits and how far it goes beyond the need. */
  private BiasComb judged(BiasCutting cutting, boolean holds, int strips, double others) {
    int served = served(cutting, holds, strips, others);
    return new BiasComb(
        longer,
        shorter,
        waist,
        near,
        laneCount,
        far,
        nearShort,
        farShort,
        nearEdge,
        farEdge,
        pairs,
        edge,
        fullNet,
        each,
        last,
        holds,
        served,
        over(cutting, holds, strips, others, served));
  }

  private double over(BiasCutting cutting, boolean holds, int strips, double others, int served) {
    Pieces pieces = cutting.pieces();
    Join join = cutting.join();
    if (pieces.ownStrips()) {
      int full = served < 0 ? 0 : strips - nearShort - farShort;
      int over = cushion(cutting).over(pieces, full, Math.max(0, served));
      return over * CushionStrips.net(pieces, join, fullStrip());
    }
    double net = holds ? ROOT2 * edge * join.gain() - strips * join.loss() + others : 0;
    return net - pieces.netNeeded(join, fullStrip());
  }

  /** Shorter strips that may be a cushion's last; -1 where strips or discs do not fit. */
  private int served(BiasCutting cutting, boolean holds, int strips, double others) {
    if (!holds || strips < nearShort + farShort) {
      return -1;
    }
    double step = cutting.lineStep();
    int beside = cutting.pieces().ownStrips() ? (int) others : 0;
    return serving(near, nearShort, step) + serving(far, farShort, step) + beside;
  }

  /** Of {@code count} strips of a corner, the first at {@code first}, those as long as a last. */
  private int serving(double first, int count, double step) {
    return count - Math.max(0, Math.min(count, Rounding.up((last / ROOT2 - first) / step)));
  }

  private CushionStrips cushion(BiasCutting cutting) {
    return CushionStrips.of(cutting.pieces(), cutting.join(), fullStrip());
  }

  /** The shortest strip that adds anything to the joined strips. */
  private double leastWorth(BiasCutting cutting) {
    return cutting.pieces().ownStrips() ? last : cutting.least();
  }

  /**
   * From the cut line at the first disc of a line to the one through the far end of the long edge
   * that strips past the discs begin at: further ones begin at the far short edge.
   */
  double room(BiasSetting setting) {
    return longer - shorter + setting.lineRim() + setting.squareEnds();
  }

  PastPieces pastPieces(BiasCutting cutting) {
    return PastPieces.of(cutting, shorter, room(cutting.setting()), leastWorth(cutting));
  }

  /** How far the near disc is pushed out of its corner, along the sum of both edges. */
  double nearSlack(BiasCutting cutting, int discs) {
    return near - cutting.reach(discs >= 1);
  }

  /** The same of the far disc. */
  double farSlack(BiasCutting cutting, int discs) {
    return far - cutting.reach(discs >= 2);
  }

  BesidePieces nearPieces(BiasCutting cutting, int discs) {
    double slack = nearSlack(cutting, discs);
    return BesidePieces.of(cutting, shorter, leastWorth(cutting), slack, discs >= 1);
  }

  BesidePieces farPieces(BiasCutting cutting, int discs) {
    double slack = farSlack(cutting, discs);
    return BesidePieces.of(cutting, shorter, leastWorth(cutting), slack, discs >= 2);
  }

  private boolean holds(BiasCutting cutting, int discs) {
    return farSlack(cutting, discs) >= -Rounding.TINY
        && fullStrip() >= cutting.least() - Rounding.TINY
        && (discs < 1 || fits(nearSlack(cutting, discs), shorter, cutting))
        && (discs < 2 || fits(farSlack(cutting, discs), shorter, cutting));
  }

  private boolean holdsLine(BiasCutting cutting) {
    double diameter = cutting.pieces().discDiameter();
    int count = cutting.setting().lineCount();
    return count > 0
        && fullStrip() >= cutting.least() - Rounding.TINY
        && diameter <= shorter + Rounding.TINY
        && count * diameter <= longer + Rounding.TINY;
  }

  /** Whether a disc pushed {@code slack} out of its corner still lies on the fabric. */
  private static boolean fits(double slack, double shorter, BiasCutting cutting) {
    return slack / 2 <= shorter - cutting.pieces().discDiameter() + Rounding.TINY;
  }

  /** Of {@code shortened} strips those that have their ends on the two edges of their corner. */
  static int cornered(int shortened, double depth, double step) {
    return Math.max(0, Math.min(shortened, Rounding.down(depth / step)));
  }

  private static int pairs(
      int nearShort, int farShort, double waist, double near, double far, double step) {
    int ofNear = cornered(nearShort, waist - near, step);
    return Math.min(ofNear, cornered(farShort, waist - far, step));
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
