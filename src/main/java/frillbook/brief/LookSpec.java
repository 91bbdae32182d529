package frillbook.brief;

import frillbook.measure.Rounding;

/**
 * How full a cushion looks.
 *
 * @param fullness flat length over stitched length
 * @param spacing from ring to ring
 */
public record LookSpec(double fullness, double spacing) {

  /** Whether the strip is at least as long as the line it is sewn to. */
  public boolean isGathered() {
    return Rounding.settle(fullness - 1) >= 0;
  }

  /** Whether no raw edge that lies so far inside its row reaches the row before. */
  public boolean clears(double stitchInset) {
    return Rounding.settle(spacing - stitchInset) > 0;
  }
}
