package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.discs.BaseWidth;
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
    Fabric frillFabric,
    Fabric baseFabric) {

  static SizedBrief of(Brief brief) {
    return new SizedBrief(
        brief,
        RowSizes.of(brief.cushion()),
        StripSizes.of(brief),
        DiscSizes.of(brief),
        Fabric.of(brief.fabric(), brief.fabric().fabricWidth()),
        Fabric.of(brief.fabric(), brief.base().baseFabricWidth()));
  }

  /** The base fabric as bases and backs are laid on it. */
  BaseWidth baseWidth() {
    return BaseWidth.of(brief, discs, baseFabric);
  }

  /** The frill fabric with its matching discs and strips for a run of {@code joinedLength}. */
  FrillCutting cuttingOf(double joinedLength) {
    Pieces pieces =
        new Pieces(
            strip.straightCutWidth(),
            joinedLength,
            brief.joinedStrips(),
            brief.fabric().spareStrips(),
            brief.fabric().shortestPiece(),
            brief.fabric().longestStrip(),
            discs.matchingDiscCount(),
            discs.baseCutDiameter(),
            brief.markingStep(),
            brief.stripWorth());
    return FrillCutting.of(brief, strip.seamLoss(), frillFabric, pieces, strip.biasCutWidth());
  }
}
