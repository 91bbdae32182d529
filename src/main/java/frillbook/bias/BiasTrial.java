package frillbook.bias;

import frillbook.cutting.Trial;
import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;

/**
 * One length of fabric tried for bias strips.
 *
 * @param tried in buy steps
 * @param usable the length left of it after washing
 * @param ends all discs in straight bands at the end of the fabric
 * @param corners one disc in each right-angled corner, the rest in bands
 * @param near beside the disc in the near corner, where corners are used
 * @param far the same in the far corner
 * @param enough whether either way yields the need
 * @param kept the longest length known not to be enough, in buy steps
 */
public record BiasTrial(
    int tried,
    double usable,
    @Prefixed("ends") BiasComb ends,
    @Prefixed("corners") BiasComb corners,
    @Prefixed("near") BesidePieces near,
    @Prefixed("far") BesidePieces far,
    boolean enough,
    int kept)
    implements Trial {

  boolean usesCorners() {
    return Rounding.settle(corners.over() - ends.over()) > 0;
  }

  public BiasComb better() {
    return usesCorners() ? corners : ends;
  }
}
