package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.GrainPlan;
import frillbook.grains.GrainPlans;
import frillbook.measure.Rounding;
import frillbook.rows.RingJoins;
import frillbook.rows.Rings;
import frillbook.strip.Join;
import java.util.List;

/**
 * Where a join comes to lie.
 *
 * @param joinNo along the run, from 1
 * @param joinAt from the start of the run to the seam
 * @param joinCushion the cushion whose frill it falls in
 * @param joinMark from the start of that frill
 * @param joinRing the ring it lies in
 * @param joinAngle in degrees from the line the rings start on, 0 to below 360
 */
public record JoinPlace(
    int joinNo, double joinAt, int joinCushion, double joinMark, int joinRing, double joinAngle) {
  /** Joins listed; an order may have more. */
  public static final int MOST = 60;

  /** The middle of the seam behind strip {@code number}, along the joined strip. */
  static double seam(int number, GrainPlans layouts, GrainPlan plan, Join join) {
    return layouts.netOf(number, plan, join) + join.loss() / 2;
  }

  /** A seam across the end of the last cushion, at a slant, lies at that end. */
  static JoinPlace of(int number, double at, double flatLength, Brief brief, Rings rings) {
    int before = Math.min(brief.cushion().quantity() - 1, Rounding.down(at / flatLength));
    double mark = Math.min(flatLength, at - before * flatLength);
    double turns = JoinWorking.of(mark, brief, rings).joinTurns();
    int ring = rings.ringAfter(turns);
    return new JoinPlace(number, at, before + 1, mark, ring, angle(turns, rings, ring));
  }

  /** Those of the first cushion. */
  static List<RingJoins.Place> ofTheFirst(List<JoinPlace> joins) {
    return joins.stream()
        .filter(join -> join.joinCushion() == 1)
        .map(join -> new RingJoins.Place(join.joinRing(), join.joinMark()))
        .toList();
  }

  /** A separate ring goes once round and on by its lap, so a part of it goes round further. */
  private static double angle(double turns, Rings rings, int ring) {
    double round = Rounding.settle((turns - ring + 1) * rings.timesRound(ring));
    return (round - Math.floor(round)) * 360;
  }
}
