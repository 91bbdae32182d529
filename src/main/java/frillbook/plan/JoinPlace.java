package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.RowStyle;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.Join;
import frillbook.measure.Rounding;
import frillbook.rows.Ring;
import frillbook.rows.Rings;
import frillbook.rows.Spiral;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where a join comes to lie.
 *
 * @param joinNo along the run, from 1
 * @param joinAt from the start of the run to the seam
 * @param joinCushion the cushion whose frill it falls in
 * @param joinMark from the start of that frill
 * @param joinStitched the same along its sewn line, from the centre
 * @param joinTurns turns of the spiral from its start, or rings and the part of the next
 * @param joinRing the ring it lies in
 * @param joinAngle in degrees from the line the rings start on, 0 to below 360
 */
public record JoinPlace(
    int joinNo,
    double joinAt,
    int joinCushion,
    double joinMark,
    double joinStitched,
    double joinTurns,
    int joinRing,
    double joinAngle) {
  /** Joins listed; an order may have more. */
  public static final int MOST = 80;

  static List<JoinPlace> all(
      Brief brief, Rings rings, double flatLength, FrillLayouts layouts, GrainPlan plan, Join join) {
    int spares = brief.cloth().spareStrips();
    double start = layouts.netOf(spares, plan, join) - join.takeup() / 2;
    return IntStream.rangeClosed(1, Math.min(MOST, plan.cut().joinCount()))
        .mapToObj(
            n -> at(n, layouts.netOf(n + spares, plan, join) - start, brief, rings, flatLength))
        .toList();
  }

  private static JoinPlace at(
      int number, double at, Brief brief, Rings rings, double flatLength) {
    int before = Rounding.down(at / flatLength);
    double mark = at - before * flatLength;
    double gathered = (mark - brief.frill().endAllowance() / 2) / brief.frill().fullness();
    double stitched = Math.min(rings.stitchedLength(), Math.max(0, gathered));
    double turns = turns(brief, rings, stitched);
    int ring = Math.min(rings.ringCount(), Rounding.down(turns) + 1);
    double angle = (turns - Math.floor(turns)) * 360;
    return new JoinPlace(number, at, before + 1, mark, stitched, turns, ring, angle);
  }

  private static double turns(Brief brief, Rings rings, double stitched) {
    return Rounding.settle(
        brief.cushion().rowStyle() == RowStyle.SPIRAL
            ? spiralTurns(brief, rings, stitched)
            : ringTurns(rings, stitched));
  }

  private static double spiralTurns(Brief brief, Rings rings, double stitched) {
    double spacing = brief.cushion().ringSpacing();
    double angle = new Spiral(spacing).angleAfter(rings.startLength() + stitched);
    return Math.max(0, angle / (2 * Math.PI) - brief.cushion().centreGap() / spacing);
  }

  private static double ringTurns(Rings rings, double stitched) {
    Ring ring =
        rings.rings().stream()
            .filter(r -> r.runningStitched() >= stitched)
            .findFirst()
            .orElse(rings.rings().get(rings.ringCount() - 1));
    double into = stitched - (ring.runningStitched() - ring.ringLength());
    return ring.ringNo() - 1 + into / ring.ringLength();
  }
}
