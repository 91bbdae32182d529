package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.BaseFabric;
import frillbook.grains.FrillCutting;
import frillbook.grains.GrainPlans;
import java.util.List;
import java.util.Optional;

/**
 * The cutting of a brief whose rows, strips and matching discs go together.
 *
 * @param prices what the order comes to in each
 * @param cutOk whether a length of frill fabric was found in the chosen grain
 * @param cut what follows from it
 */
public record GrainsCompared(
    GrainPlans layouts,
    List<GrainRow> grains,
    GrainPrices prices,
    boolean cutOk,
    Optional<ChosenGrain> cut) {

  static GrainsCompared of(
      SizedBrief sized, Sizes sizes, Checks checks, Frill frill, BaseFabric base) {
    Brief brief = sized.brief();
    FrillCutting cutting = sized.cuttingOf(frill.strip().joinedNeed());
    GrainPlans layouts = GrainPlans.of(cutting, sizes.starts(), brief.fabric().grain());
    Optional<ChosenGrain> cut =
        layouts
            .plan(brief.fabric().grain())
            .map(plan -> ChosenGrain.of(sized, sizes, checks, frill, base, cutting, layouts, plan));
    Optional<GrainReckoner> reckoner =
        cut.map(chosen -> new GrainReckoner(brief, sizes, cutting, chosen));
    List<GrainRow> rows = GrainRow.all(layouts, reckoner);
    return new GrainsCompared(layouts, rows, GrainPrices.of(brief, rows), cut.isPresent(), cut);
  }
}
