package frillbook.layout;

import frillbook.brief.Brief;
import frillbook.brief.ClothSpec;
import frillbook.brief.Grain;
import frillbook.plan.ChosenGrain;
import frillbook.plan.CutPiece;
import frillbook.plan.CutTotals;
import frillbook.plan.GrainsCompared;
import java.util.List;

/**
 * What a maker has in hand at the cutting table: the figures on the sheet Cutting, and the cloth,
 * washed and with the selvages off, under a tape measure.
 *
 * @param perLine overlays in a line, as the sheet's sentence says; straight grain only
 * @param cornerDiscs overlays in the corners, as the sentence says; bias only
 * @param discDiameter of an overlay; 0 where there is none
 * @param shorter lengths of the shorter strips
 * @param slanting whether the ends of strips are cut along the longer side of the cloth
 */
record CuttingSheet(
    Grain grain,
    double clothLength,
    double clothWidth,
    double firstMark,
    double markStep,
    double nearDiscPush,
    double discPush,
    double overlayStart,
    int perLine,
    int cornerDiscs,
    int overlays,
    double discDiameter,
    int fullStrips,
    double fullLength,
    double stripWidth,
    List<Double> shorter,
    boolean slanting) {

  static CuttingSheet of(Laid laid) {
    Brief brief = laid.brief();
    ClothSpec cloth = brief.cloth();
    GrainsCompared cutting = laid.plan().cutting().orElseThrow();
    ChosenGrain frill = cutting.cut().orElseThrow();
    CutTotals cut = frill.total();
    CutPiece overlays = frill.cutList().get(0);
    CutPiece full = frill.cutList().get(1);
    List<CutPiece> shorter = frill.cutList().subList(2, frill.cutList().size());
    return new CuttingSheet(
        cloth.grain(),
        cut.buyLength() * (1 - cloth.washShrinkLength()),
        (cloth.fabricWidth() - 2 * cloth.selvage()) * (1 - cloth.washShrinkWidth()),
        cut.firstMark(),
        cut.markStep(),
        cut.nearDiscPush(),
        cut.discPush(),
        cut.overlayStart(),
        perLine(cutting, cloth.grain()),
        laid.isBias() ? cutting.layouts().bias().orElseThrow().cornerDiscs() : 0,
        overlays.cutCount(),
        overlays.size().map(CutPiece.Size::cutLength).orElse(0.0),
        full.cutCount(),
        full.size().map(CutPiece.Size::cutLength).orElse(0.0),
        frill.cutList().stream()
            .skip(1)
            .flatMap(piece -> piece.size().stream())
            .findFirst()
            .orElseThrow()
            .cutWidth(),
        shorter.stream().map(piece -> piece.size().orElseThrow().cutLength()).toList(),
        laid.slanting());
  }

  private static int perLine(GrainsCompared cutting, Grain grain) {
    return switch (grain) {
      case ACROSS -> cutting.layouts().across().orElseThrow().perLine();
      case ALONG -> cutting.layouts().along().orElseThrow().perLine();
      case BIAS -> 0;
    };
  }

  boolean isBias() {
    return grain == Grain.BIAS;
  }

  /** Of the cloth that strips are cut from: on the bias a band of overlays is cut off first. */
  double stripsLength() {
    return isBias() && overlays > cornerDiscs ? overlayStart : clothLength;
  }
}
