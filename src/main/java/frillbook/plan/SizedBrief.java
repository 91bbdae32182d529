package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.Cloth;
import frillbook.cutting.Pieces;
import frillbook.discs.DiscSizes;
import frillbook.grains.FrillCutting;
import frillbook.rows.RowSizes;
import frillbook.strip.StripSizes;

/** A brief laid out as the parts of the work, before anything is decided about them. */
record SizedBrief(
    Brief brief,
    RowSizes rows,
    StripSizes strip,
    DiscSizes discs,
    Cloth frillCloth,
    Cloth baseCloth) {

  static SizedBrief of(Brief brief) {
    return new SizedBrief(
        brief,
        RowSizes.of(brief.cushion()),
        StripSizes.of(brief),
        DiscSizes.of(brief),
        Cloth.of(brief.cloth(), brief.cloth().fabricWidth()),
        Cloth.of(brief.cloth(), brief.base().baseFabricWidth()));
  }

  /** The frill cloth with its overlays and strips for a run of {@code joinedLength}. */
  FrillCutting cuttingOf(double joinedLength) {
    Pieces pieces =
        new Pieces(
            strip.stripCutWidth(),
            joinedLength,
            brief.cloth().spareStrips(),
            brief.cloth().shortestPiece(),
            discs.overlayCount(),
            discs.baseCutDiameter(),
            brief.markingStep());
    return FrillCutting.of(brief, strip.seamLoss(), frillCloth, pieces);
  }
}
