package frillbook.brief;

/**
 * The disc the frill is sewn to, the back, and the overlays between.
 *
 * @param seamAllowance of the edge seam
 * @param sewingTakeup share of its width by which the rows draw the base in
 * @param baseOverlays discs of frill cloth laid over each base
 * @param backOverlays discs of frill cloth laid over each back
 * @param baseFabricWidth of the cloth for bases and backs, selvage to selvage
 * @param zipSeam added to each half of a zipped back
 * @param backOverlap of the two pieces of an overlapping back
 * @param backHem turned under on each of those two pieces
 */
public record BaseSpec(
    double seamAllowance,
    double sewingTakeup,
    int baseOverlays,
    int backOverlays,
    double baseFabricWidth,
    BackStyle backStyle,
    double zipSeam,
    double backOverlap,
    double backHem) {

  /** Discs of frill cloth laid over the base and the back of one cushion. */
  public int overlays() {
    return baseOverlays + backOverlays;
  }
}
