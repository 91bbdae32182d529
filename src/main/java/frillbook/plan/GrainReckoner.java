package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.brief.TimeSpec;
import frillbook.cutting.GrainPlan;
import frillbook.grains.FrillCutting;
import frillbook.materials.Rebilling;
import frillbook.time.Hours;
import java.util.Optional;

/**
 * Reckons the order in another grain from the plan in the chosen one: strips, joins, frill fabric
 * and the thread of joins are others, everything else stays. The chosen grain gives the plan's own
 * hours and price.
 */
record GrainReckoner(Brief brief, Sizes sizes, FrillCutting cutting, ChosenGrain chosen) {

  /** The work of {@code plan} in {@code grain}. */
  GrainRow.Work work(Grain grain, GrainPlan plan) {
    double used = cutting.usedLength(grain);
    double thread = thread(grain, plan);
    double hours = hours(plan);
    Rebilling.Cost cost = billing().cost(plan.buyLength(), used, thread, hours);
    return new GrainRow.Work(
        sizes.strip().cutWidth(grain),
        used,
        thread,
        hours,
        cost,
        asked(cost, grain == brief.fabric().grain()));
  }

  private double hours(GrainPlan plan) {
    TimeSpec times = brief.times();
    int strips = plan.cut().all().count() - chosen.total().stripCount();
    int joins = plan.cut().joinCount() - chosen.total().joinCount();
    double minutes =
        strips * times.cutStrips().rate()
            + joins * times.joinStrips().rate()
            + setUps(plan) * times.joinStrips().setup();
    return chosenHours().hoursTotal() + minutes / 60;
  }

  /** Joining is set up for where there is something to join: 1 once more, −1 once less. */
  private int setUps(GrainPlan plan) {
    return Integer.signum(plan.cut().joinCount()) - Integer.signum(chosen.total().joinCount());
  }

  private Hours chosenHours() {
    return chosen.costing().hours();
  }

  /** In metres. */
  private double thread(Grain grain, GrainPlan plan) {
    double seams =
        plan.cut().joinCount() * sizes.strip().cutWidth(grain)
            - chosen.total().joinCount() * sizes.strip().stripCutWidth();
    double more = brief.unit().metres(seams * sizes.joinPasses()) * brief.thread().threadRatio();
    return chosen.costing().thread().threadLength() + (1 + brief.thread().threadWaste()) * more;
  }

  /** Empty where the profit is no possible one. */
  private Optional<GrainRow.Asked> asked(Rebilling.Cost cost, boolean own) {
    return bill()
        .asking()
        .map(asks -> billing().price(cost, own))
        .map(price -> new GrainRow.Asked(price.netEach(), price.priceTotal()));
  }

  private Rebilling billing() {
    return new Rebilling(
        brief, sizes.usableShare(), bill().materials(), bill().costs().costTotal());
  }

  private Bill bill() {
    return chosen.costing().bill();
  }
}
