package frillbook.brief;

/**
 * The disc the frill is sewn to, the back, and the matching discs between.
 *
 * @param seamAllowance of the edge seam
 * @param drawIn share of its width by which the rows draw the base in
 * @param matchingDiscs discs laid over each base
 * @param backMatchingDiscs discs laid over each back
 * @param baseFabricWidth of the fabric for bases and backs, selvage to selvage
 * @param zipSeam added to each half of a zipped back
 * @param zipStep lengths in which zips are sold
 * @param backOverlap of the two pieces of an overlapping back
 * @param backHem turned under on each of those two pieces
 */
public record BaseSpec(
    double seamAllowance,
    double drawIn,
    int matchingDiscs,
    int backMatchingDiscs,
    MatchingDiscFabric matchingDiscFabric,
    double baseFabricWidth,
    BackStyle backStyle,
    double zipSeam,
    double zipStep,
    double backOverlap,
    double backHem) {

  /**
   * So that half a sixteenth, as in 3/4 ÷ 0.96 = 25/32, is shown as 13/16 by programs that would
   * round a bare half down as well as by those that round it up.
   */
  private static final double HAIR = 1e-10;

  /** What is marked on the base over what it will be once sewing has drawn it in: 1 ÷ (1 − t). */
  public double markedGrowth() {
    return (1 + HAIR) / (1 - drawIn);
  }
}
