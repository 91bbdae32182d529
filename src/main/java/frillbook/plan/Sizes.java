package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.discs.BaseWidth;
import frillbook.discs.DiscSizes;
import frillbook.grains.FrillCutting;
import frillbook.grains.GrainStarts;
import frillbook.rows.Cover;
import frillbook.rows.RowSizes;
import frillbook.strip.GatheringRows;
import frillbook.strip.StripSizes;

/**
 * Sizes known from a sound brief before it is known whether the plan works out.
 *
 * @param usableWidth of the frill fabric, between selvages, after washing
 * @param usableShare of a bought length left after washing
 * @param isWashed whether the fabric is meant to shrink before it is cut
 * @param joinGain joined over cut length in the chosen grain, above 1 for bias that stretches
 * @param cutLineStep distance of bias cut lines along the fabric's edge
 * @param grainNo 1 across, 2 along, 3 bias
 * @param chosenShortestUseful the shortest strip that is cut in the chosen grain
 * @param joinPasses seams sewn for one join; a French join is sewn twice
 * @param edgeSewn whether the free edge takes a seam
 * @param ownStrips whether every cushion has a joined strip of its own, one of several
 * @param joinedStrips one for each cushion, or one for the order
 * @param stripWorth length of frill fabric that costs as much as to cut and join a strip
 * @param joinedShare joined length over the length needed
 */
public record Sizes(
    RowSizes rows,
    Cover cover,
    StripSizes strip,
    GatheringRows gathering,
    DiscSizes discs,
    double usableWidth,
    double usableShare,
    boolean isWashed,
    BaseWidth baseWidth,
    double joinGain,
    double cutLineStep,
    int grainNo,
    double chosenShortestUseful,
    int joinPasses,
    boolean edgeSewn,
    boolean ownStrips,
    double joinedShare,
    int joinedStrips,
    double stripWorth,
    GrainStarts starts) {

  static Sizes of(SizedBrief sized) {
    Brief brief = sized.brief();
    Grain grain = brief.fabric().grain();
    Fabric fabric = sized.frillFabric();
    // The length of the run has no part in these sizes.
    FrillCutting cutting = sized.cuttingOf(0);
    GrainStarts starts = cutting.starts();
    return new Sizes(
        sized.rows(),
        Cover.of(brief, sized.rows()),
        sized.strip(),
        GatheringRows.of(brief),
        sized.discs(),
        fabric.usableWidth(),
        fabric.usableShare(),
        brief.fabric().washShrinkLength() + brief.fabric().washShrinkWidth() > 0,
        sized.baseWidth(),
        cutting.join(grain).gain(),
        cutting.bias().lineStep(),
        grain.ordinal() + 1,
        starts.of(grain).shortestUseful(),
        brief.joins().joinFinish().passes(),
        brief.frill().edgeFinish().isSewn(),
        brief.ownStrips(),
        brief.joinedShare(),
        brief.joinedStrips(),
        brief.stripWorth(),
        starts);
  }
}
