package frillbook.plan;

import frillbook.brief.Grain;
import frillbook.cutting.FrillCutting;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.Join;
import frillbook.brief.Brief;

/**
 * What is cut from the frill cloth in the chosen grain, for the whole order.
 *
 * @param stripLength cut length of a full strip
 * @param joinTakeup length lost at every join
 * @param fullCount full strips cut
 * @param oddCount shorter strips cut
 * @param stripCount strips cut, spares included
 * @param joinCount joins in the run
 * @param joinedLength of the run, spares left out
 * @param spareNet length the spare strips would add
 * @param buyLength cloth to buy
 * @param clothLowerBound area of the pieces over the usable width, rounded up to the buy step
 * @param clothRatio bought over lower bound
 */
public record FrillCut(
    double stripLength,
    double joinTakeup,
    int fullCount,
    int oddCount,
    int stripCount,
    int joinCount,
    double joinedLength,
    double spareNet,
    double buyLength,
    double clothLowerBound,
    double clothRatio) {

  static FrillCut of(Brief brief, FrillCutting cutting, FrillLayouts layouts, GrainPlan plan) {
    Grain grain = brief.cloth().grain();
    Join join = cutting.join(grain);
    double spare = layouts.netOf(brief.cloth().spareStrips(), plan, join);
    double joined =
        layouts.netOf(plan.cut().stripCount(), plan, join) - spare + join.takeup();
    return new FrillCut(
        plan.stripLength(),
        join.takeup(),
        plan.cut().fullCut(),
        plan.cut().oddCut(),
        plan.cut().stripCount(),
        plan.cut().joinCount(),
        joined,
        spare,
        plan.buyLength(),
        plan.lowerBound(),
        plan.ratio());
  }
}
