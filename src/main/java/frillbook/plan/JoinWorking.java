package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.RowStyle;
import frillbook.measure.Rounding;
import frillbook.rows.Rings;
import frillbook.rows.Spiral;

/**
 * How a mark on the strip is found on the sewn line.
 *
 * @param joinStitched the mark along the sewn line, from where the rows begin
 * @param joinTarget 4π × length from the centre over spacing: what the spiral's angle must reach;
 *     the closing ring is left out
 * @param joinGuess first guess at that angle, √target
 * @param joinCloser after one Newton step
 * @param joinCloserStill after two
 * @param joinTurned after three: the angle turned from the centre, in radians
 * @param ringsBefore for separate rings: how many are complete
 * @param joinTurns turns, or rings and a part of the next, from where the rows begin; settled
 */
public record JoinWorking(
    double joinStitched,
    double joinTarget,
    double joinGuess,
    double joinCloser,
    double joinCloserStill,
    double joinTurned,
    int ringsBefore,
    double joinTurns) {

  static JoinWorking of(double mark, Brief brief, Rings rings) {
    double spacing = brief.cushion().ringSpacing();
    double gathered = (mark - brief.frill().endAllowance() / 2) / brief.frill().fullness();
    double stitched = Math.min(rings.stitchedLength(), Math.max(0, gathered));
    double closing = Math.max(0, stitched - rings.stitchedLength() + rings.closingLength());
    double target = 4 * Math.PI * (rings.startLength() + stitched - closing) / spacing;
    double guess = Math.sqrt(target);
    double closer = Spiral.closer(guess, target);
    double closerStill = Spiral.closer(closer, target);
    double turned = Spiral.closer(closerStill, target);
    boolean spiral = brief.cushion().rowStyle() == RowStyle.SPIRAL;
    int before = spiral ? 0 : ringsBefore(rings, stitched);
    double turns =
        spiral
            ? Math.max(0, turned / (2 * Math.PI) - brief.cushion().centreGap() / spacing)
                + (closing > 0 ? closing / rings.closingLength() : 0)
            : before + intoRing(rings, before, stitched);
    return new JoinWorking(
        stitched, target, guess, closer, closerStill, turned, before, Rounding.settle(turns));
  }

  private static int ringsBefore(Rings rings, double stitched) {
    long complete = rings.rings().stream().filter(r -> r.runningStitched() < stitched).count();
    return Math.min(rings.ringCount() - 1, (int) complete);
  }

  private static double intoRing(Rings rings, int before, double stitched) {
    double reached = before == 0 ? 0 : rings.rings().get(before - 1).runningStitched();
    return (stitched - reached) / rings.rings().get(before).ringLength();
  }
}
