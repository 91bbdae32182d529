package frillbook.brief;

/**
 * The gathered strip.
 *
 * @param fullness flat length over stitched length, at least 1
 * @param frillHeight finished, from the sewn line to the free edge
 * @param stitchInset from the raw gathered edge to the sewn line
 * @param hemTurns both turns of a narrow hem together
 * @param overlockTrim what an overlock or rolled edge trims off
 * @param endAllowance for tucking in both ends of the strip, together
 * @param gatherSection longest part of the sewn line whose strip is pulled up in one; about 12 in
 *     (common practice, no source)
 */
public record FrillSpec(
    double fullness,
    double frillHeight,
    double stitchInset,
    EdgeFinish edgeFinish,
    double hemTurns,
    double overlockTrim,
    double endAllowance,
    double gatherSection) {

  FrillSpec withFullness(double times) {
    return new FrillSpec(
        times,
        frillHeight,
        stitchInset,
        edgeFinish,
        hemTurns,
        overlockTrim,
        endAllowance,
        gatherSection);
  }
}
