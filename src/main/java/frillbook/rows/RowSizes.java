package frillbook.rows;

import frillbook.brief.CushionSpec;
import frillbook.brief.RowStyle;
import frillbook.measure.Outline;
import frillbook.measure.Rounding;

/**
 * Where the rows start and end, known before it is known whether any fits.
 *
 * @param rimLength around the cushion, the length of its edge seam
 * @param outerRadius of the outermost row: half the diameter less the edge clearance
 * @param firstRadius of the innermost: the centre gap, or for separate rings without a gap one
 *     spacing, since a circle of radius 0 is no circle
 */
public record RowSizes(double rimLength, double outerRadius, double firstRadius) {

  public static RowSizes of(CushionSpec cushion) {
    double outer = cushion.diameter() / 2 - cushion.edgeClearance();
    return new RowSizes(Outline.around(cushion.diameter()), outer, firstRadius(cushion));
  }

  /** Whether at least one ring spacing lies between centre gap and outer radius. */
  public boolean leaveRoomFor(CushionSpec cushion) {
    double band = outerRadius - cushion.centreGap();
    return Rounding.settle(band - cushion.ringSpacing()) >= 0;
  }

  /**
   * Turns of the spiral, the last one begun, and the ring that closes it, or circles; where at
   * least one fits.
   */
  int ringCount(CushionSpec cushion) {
    double turns = (outerRadius - firstRadius) / cushion.ringSpacing();
    int closing = cushion.isClosed() ? 1 : 0;
    return cushion.rowStyle() == RowStyle.SPIRAL
        ? Rounding.up(turns) + closing
        : Rounding.down(turns) + 1;
  }

  /** Where the turn {@code ring} ends, counted from 1, or the radius of that circle. */
  double radius(CushionSpec cushion, int ring) {
    return cushion.rowStyle() == RowStyle.SPIRAL
        ? Math.min(outerRadius, cushion.centreGap() + ring * cushion.ringSpacing())
        : firstRadius + (ring - 1) * cushion.ringSpacing();
  }

  private static double firstRadius(CushionSpec cushion) {
    boolean circleAtNothing =
        cushion.rowStyle() == RowStyle.RINGS && cushion.centreGap() < Rounding.TINY;
    return circleAtNothing ? cushion.ringSpacing() : cushion.centreGap();
  }
}
