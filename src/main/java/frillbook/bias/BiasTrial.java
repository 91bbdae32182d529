package frillbook.bias;

import frillbook.cutting.Trial;
import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;

/**
 * One length of fabric tried for bias strips.
 *
 * @param tried in buy steps
 * @param usable the length left of it, washed and its ends straightened
 * @param ends all discs in straight bands at the end of the fabric
 * @param corners one disc in each right-angled corner, the rest in bands
 * @param line discs in a line along a long edge, the rest in bands
 * @param near beside the disc in the near corner, where corners are used
 * @param far the same in the far corner
 * @param past past the line of discs, where that is used
 * @param kept the longest length known not to be enough, in buy steps
 */
public record BiasTrial(
    int tried,
    double usable,
    @Prefixed("ends") BiasComb ends,
    @Prefixed("corners") BiasComb corners,
    @Prefixed("line") BiasComb line,
    @Prefixed("near") BesidePieces near,
    @Prefixed("far") BesidePieces far,
    @Prefixed("line") PastPieces past,
    int kept)
    implements Trial {

  boolean usesCorners() {
    return !usesLine() && Rounding.settle(corners.over() - ends.over()) > 0;
  }

  /** Discs in the right-angled corners. */
  int cornerDiscs(BiasSetting setting) {
    return usesCorners() ? setting.cornerCount() : 0;
  }

  /** Length of the bands that hold the other discs. */
  double band(BiasSetting setting) {
    if (usesLine()) {
      return setting.lineBand();
    }
    return usesCorners() ? setting.cornersBand() : setting.endsBand();
  }

  /** Only where nothing plainer is enough, for it takes more strips. */
  boolean usesLine() {
    double plain = Math.max(ends.over(), corners.over());
    return Rounding.settle(plain) < 0 && Rounding.settle(line.over()) >= 0;
  }

  /** Strips past the line of discs, if discs lie so. */
  int lineStrips(BiasSetting setting) {
    return usesLine() ? setting.lineRows() : 0;
  }

  public BiasComb better() {
    if (usesLine()) {
      return line;
    }
    return usesCorners() ? corners : ends;
  }
}
