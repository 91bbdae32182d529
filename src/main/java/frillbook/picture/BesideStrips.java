package frillbook.picture;

import frillbook.bias.BesideDisc;
import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Strips beside discs, as one line round them all. On the bias they are the pieces left and right
 * of the disc in one corner, on straight grain the first or the next lanes beside the discs.
 *
 * <p>The line goes round each strip and on along a cut line or an edge of the fabric. On the bias
 * it takes the left pieces, rests in the corner of the fabric, so as not to cross the disc, and
 * takes the right ones.
 *
 * @param besideLeftCut left pieces that are cut
 * @param besideRightCut right pieces
 * @param besideSkip pieces next to the last cut line from edge to edge that are too wide for the
 *     corner
 * @param besideStrips strips and lanes drawn, the rest between left and right among them
 * @param besideFrom how deep the first of them lies, at right angles to the strips
 */
public record BesideStrips(
    int besideLeftCut,
    int besideRightCut,
    int besideSkip,
    int besideStrips,
    double besideFrom,
    List<BesideStrip> besideRows,
    List<BesidePoint> besidePoints) {
  /** Strips drawn at most. */
  static final int MOST = 2 * BesideDisc.MOST + 1;

  /**
   * A strip, or a place to rest.
   *
   * @param besideLane strip widths from the first
   * @param besideOffered its length if it is cut
   * @param besideTies strips up to here that are just as long as the shortest that is cut
   * @param besideCut whether it is cut, on straight grain
   * @param besidePiece its length, full strips in its lane included; 0 where none is cut
   * @param besideDepth how deep its nearer side lies
   * @param besideStart how far along itself it begins
   * @param besideFirst the corner the line comes in at: 0 on the nearer side, 2 on the other
   * @param runs its corners along the strips, in the order the line goes round
   * @param deeps the first two corners across the strips, and the other two
   */
  public record BesideStrip(
      int besideLane,
      double besideOffered,
      int besideTies,
      boolean besideCut,
      double besidePiece,
      double besideDepth,
      double besideStart,
      int besideFirst,
      @Prefixed("beside_run") Runs runs,
      @Prefixed("beside_deep") Deeps deeps) {
    static final int INNER = 0;
    static final int OUTER = 2;
  }

  public record Runs(double one, double two, double three, double four) {
    double corner(int corner) {
      return List.of(one, two, three, four).get(corner);
    }
  }

  public record Deeps(double one, double two) {}

  /**
   * A corner of a strip.
   *
   * @param besideX along the selvage; 1 is the height of the picture
   * @param besideY across the fabric
   * @param tint the middle of the strip's end there
   */
  public record BesidePoint(double besideX, double besideY, @Prefixed("tint") Spot tint) {}

  /** Ties met up to the end of these strips. */
  int ties() {
    return besideRows.get(MOST - 1).besideTies();
  }

  /** Strips on straight grain that are cut here. */
  int cut() {
    return (int) besideRows.stream().filter(row -> row.besideCut()).count();
  }

  /** With the points of the picture. */
  BesideStrips placed(Turning turning, double yFrom, Spot far) {
    List<Spot> corners =
        IntStream.range(0, 4 * MOST).mapToObj(i -> corner(i, turning, yFrom)).toList();
    List<BesidePoint> points =
        IntStream.range(0, 4 * MOST).mapToObj(i -> point(i, corners, far)).toList();
    return new BesideStrips(
        besideLeftCut, besideRightCut, besideSkip, besideStrips, besideFrom, besideRows, points);
  }

  /** The first corner of a strip lies across from the last, the second from the third. */
  private static BesidePoint point(int index, List<Spot> corners, Spot far) {
    Spot at = corners.get(index);
    Spot across = corners.get(index + 3 - 2 * (index % 4));
    return new BesidePoint(at.x(), at.y(), at.halfway(across, far));
  }

  private Spot corner(int index, Turning turning, double yFrom) {
    BesideStrip row = besideRows.get(index / 4);
    int corner = index % 4;
    double run = row.runs().corner(corner);
    double stack = corner < 2 ? row.deeps().one() : row.deeps().two();
    return new Spot(
        Rounding.drawn(turning.xRun() * run + turning.xStack() * stack),
        Rounding.drawn(turning.yRun() * run + turning.yStack() * stack + yFrom));
  }
}
