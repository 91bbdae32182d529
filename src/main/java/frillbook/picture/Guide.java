package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.brief.RowStyle;
import frillbook.measure.Rounding;
import frillbook.rows.Ring;
import frillbook.rows.Rings;
import frillbook.rows.Spiral;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How far the strip has been used up when a ring is reached.
 *
 * @param guideTurns turns and the closing ring, or rings, in all
 * @param guideZero mark a spiral from the middle would begin at
 * @param guideScale what a unit of the spiral's own length adds to the mark
 * @param guides marks at equal steps of the rings
 * @param guideHalf rings after which half of the strip is used, to the step below
 * @param guideJoins joins in the first cushion; the last again where there are few, the start for
 *     none
 */
public record Guide(
    double guideTurns,
    double guideZero,
    double guideScale,
    List<GuidePoint> guides,
    double guideHalf,
    List<GuideJoin> guideJoins) {
  private static final int STEPS = 30;

  /** Joins marked at most. */
  private static final int JOINS = 20;

  /**
   * A place on the rows and the mark of the strip that has come to it.
   *
   * @param guideTurn rings sewn
   * @param guideAngle radians a spiral from the middle has turned
   * @param guideRing the ring being sewn, from 1
   */
  public record GuidePoint(double guideTurn, double guideAngle, int guideRing, double guideMark) {}

  public record GuideJoin(double guideJoinTurn, double guideJoinMark) {}

  /** {@code joins} are those of the first cushion, in order. */
  public static Guide of(Brief brief, Rings rings, double flatLength, List<GuideJoin> joins) {
    boolean spiral = brief.cushion().rowStyle() == RowStyle.SPIRAL;
    double turns = rings.sewnTurns();
    List<GuidePoint> points =
        IntStream.rangeClosed(0, STEPS)
            .mapToDouble(i -> turns * i / STEPS)
            .mapToObj(turn -> point(brief, rings, spiral, turn))
            .toList();
    double half = flatLength / 2 + Rounding.TINY;
    long within = points.stream().filter(p -> p.guideMark() <= half).count();
    return new Guide(
        turns,
        brief.frill().endAllowance() / 2 - brief.frill().fullness() * rings.startLength(),
        brief.frill().fullness() * brief.cushion().ringSpacing() / (4 * Math.PI),
        points,
        points.get((int) within - 1).guideTurn(),
        joins(joins, points.get(0)));
  }

  private static GuidePoint point(Brief brief, Rings rings, boolean spiral, double turn) {
    return new GuidePoint(
        turn,
        rings.startAngle() + 2 * Math.PI * Math.min(turn, rings.turnCount()),
        rings.ringAfter(turn),
        mark(brief, rings, spiral, turn));
  }

  private static double mark(Brief brief, Rings rings, boolean spiral, double turns) {
    double sewn = spiral ? onSpiral(brief, rings, turns) : onRings(rings, turns);
    return brief.frill().endAllowance() / 2 + brief.frill().fullness() * sewn;
  }

  private static double onSpiral(Brief brief, Rings rings, double turns) {
    double spacing = brief.cushion().ringSpacing();
    double wound = Math.min(turns, rings.turnCount());
    double radius = brief.cushion().centreGap() + wound * spacing;
    return new Spiral(spacing).lengthTo(radius)
        - rings.startLength()
        + (turns - wound) * rings.closingLength();
  }

  private static double onRings(Rings rings, double turns) {
    int before = Math.min(rings.ringCount() - 1, Rounding.down(turns));
    Ring ring = rings.rings().get(before);
    return ring.runningStitched() - (before + 1 - turns) * ring.ringLength();
  }

  private static List<GuideJoin> joins(List<GuideJoin> joins, GuidePoint start) {
    var none = new GuideJoin(start.guideTurn(), start.guideMark());
    return IntStream.range(0, JOINS)
        .mapToObj(i -> joins.isEmpty() ? none : joins.get(Math.min(i, joins.size() - 1)))
        .toList();
  }
}
