package frillbook.layout;

import frillbook.brief.Brief;
import frillbook.brief.FabricSpec;
import frillbook.brief.Grain;
import frillbook.plan.ChosenGrain;
import frillbook.plan.CutPiece;
import frillbook.plan.CutTotals;
import frillbook.plan.GrainsCompared;
import java.util.List;

/**
 * What a maker has in hand at the cutting table: the figures on the sheet Cutting, and the fabric,
 * washed, its ends straightened and the selvages off, under a tape measure.
 *
 * @param discsApart whether the second of two lies at the strips' other end
 * @param discsZigzag whether it lies there and at the far selvage
 * @param perLine matching discs in a line, as the sheet's sentence says; straight grain only
 * @param cornerDiscs matching discs in the corners, as the sentence says; bias only
 * @param lineDiscs matching discs in a line along the long edge, as the sentence says; bias only
 * @param lineMark where the cut line that touches the first of these meets both edges
 * @param cornerPairs strips of the near corner that are joined to one of the far corner
 * @param nearUnpaired strips between the near corner and the first of these
 * @param farUnpaired the same in the far corner
 * @param discDiameter of a matching disc; 0 where there is none
 * @param shorter lengths of the shorter strips
 * @param slanting whether the ends of strips are cut along the longer side of the fabric
 */
record CuttingSheet(
    Grain grain,
    double fabricLength,
    double fabricWidth,
    double firstMark,
    double markStep,
    double lastMark,
    double nearDiscPush,
    double discPush,
    double matchingDiscStart,
    boolean discsApart,
    boolean discsZigzag,
    int perLine,
    int cornerDiscs,
    int lineDiscs,
    double lineMark,
    int cornerPairs,
    int nearUnpaired,
    int farUnpaired,
    int matchingDiscs,
    double discDiameter,
    int fullStrips,
    double fullLength,
    double stripWidth,
    List<Double> shorter,
    boolean slanting) {

  static CuttingSheet of(Laid laid) {
    Brief brief = laid.brief();
    FabricSpec fabric = brief.fabric();
    GrainsCompared cutting = laid.plan().cutting().orElseThrow();
    ChosenGrain frill = cutting.cut().orElseThrow();
    CutTotals cut = frill.total();
    CutPiece matchingDiscs = frill.cutList().get(0);
    CutPiece full = frill.cutList().get(1);
    List<CutPiece> shorter = frill.cutList().subList(2, frill.cutList().size());
    return new CuttingSheet(
        fabric.grain(),
        cut.buyLength() * (1 - fabric.washShrinkLength()) - fabric.squaringAllowance(),
        (fabric.fabricWidth() - 2 * fabric.selvage()) * (1 - fabric.washShrinkWidth()),
        cut.firstMark(),
        cut.markStep(),
        cut.lastMark(),
        cut.nearDiscPush(),
        cut.discPush(),
        cut.matchingDiscStart(),
        cut.discsApart(),
        cut.discsZigzag(),
        perLine(cutting, fabric.grain()),
        laid.isBias() ? cutting.layouts().bias().orElseThrow().cornerDiscs() : 0,
        cut.lineMatchingDiscs(),
        cut.lineMark(),
        cut.cornerPairs(),
        cut.nearUnpaired(),
        cut.farUnpaired(),
        matchingDiscs.cutCount(),
        matchingDiscs.size().map(CutPiece.Size::cutLength).orElse(0.0),
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
      case CROSSWISE -> cutting.layouts().crosswise().orElseThrow().perLine();
      case LENGTHWISE -> cutting.layouts().lengthwise().orElseThrow().perLine();
      case BIAS -> 0;
    };
  }

  /** Whether the strip {@code number}, from 1, off the near corner is one of a pair. */
  boolean isPairedNear(long number) {
    return number > nearUnpaired && number <= nearUnpaired + cornerPairs;
  }

  /** The same off the far corner. */
  boolean isPairedFar(long number) {
    return number > farUnpaired && number <= farUnpaired + cornerPairs;
  }

  /** Whether lengthwise strips are shorter than the fabric, several end to end. */
  boolean isDivided() {
    return grain == Grain.LENGTHWISE && fullStrips > 0 && fullLength < fabricLength - 1e-6;
  }

  boolean isBias() {
    return grain == Grain.BIAS;
  }

  /**
   * Of the fabric that strips are cut from: on the bias a band of matching discs is cut off first.
   */
  double stripsLength() {
    return isBias() && matchingDiscs > cornerDiscs + lineDiscs ? matchingDiscStart : fabricLength;
  }
}
