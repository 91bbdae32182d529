package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.fill.Filling;
import frillbook.materials.Interfacing;
import frillbook.materials.Mass;
import frillbook.materials.Materials;
import frillbook.money.Bargain;
import frillbook.money.Costs;
import frillbook.money.Money;
import frillbook.money.Price;
import frillbook.naming.Prefixed;
import frillbook.thread.ThreadNeed;
import frillbook.time.Hours;
import java.util.List;

/**
 * What the order takes, lasts, costs and asks, and two other looks beside it.
 *
 * @param zipCount one for each zipped back
 * @param frillUsedLength cloth in frills and overlays as a length of the usable width, after
 *     washing, in the unit of the brief
 * @param meanStripNet what a strip of the run adds to it on average
 * @param two search for the cloth of the second choice
 * @param three the same for the third
 * @param choices the brief itself and both others
 * @param clientChoices the same as a client is shown them
 */
public record Costing(
    Filling filling,
    ThreadNeed thread,
    Interfacing interfacing,
    int zipCount,
    Mass mass,
    double frillUsedLength,
    Materials materials,
    Hours hours,
    Costs costs,
    Price price,
    Bargain bargain,
    double meanStripNet,
    @Prefixed("two") ChoiceSearch two,
    @Prefixed("three") ChoiceSearch three,
    List<ChoiceRow> choices,
    List<ClientChoice> clientChoices) {

  static Costing of(Job job) {
    Brief brief = job.brief();
    Filling filling = Filling.of(brief);
    ThreadNeed thread = ThreadNeed.of(brief, job.sewing());
    Materials materials =
        Materials.of(brief, job.needs(filling.fillWeight(), thread.threadLength()));
    Hours hours = Hours.of(brief.times(), job.amounts());
    return priced(job, filling, thread, materials, hours);
  }

  private static Costing priced(
      Job job, Filling filling, ThreadNeed thread, Materials materials, Hours hours) {
    Brief brief = job.brief();
    Money money = Money.in(brief.money().currencyCode());
    Costs costs = Costs.of(money, brief.money(), materials.materialsTotal(), hours.hoursTotal());
    Price price = Price.of(money, brief.money(), costs.costTotal(), job.quantity());
    Candidate two = Candidate.of(brief, brief.choices().two());
    Candidate three = Candidate.of(brief, brief.choices().three());
    ChoiceReckoner reckoner = new ChoiceReckoner(job, thread, materials, hours);
    List<ChoiceRow> choices =
        List.of(
            ChoiceRow.of(1, Candidate.own(job), reckoner),
            ChoiceRow.of(2, two, reckoner),
            ChoiceRow.of(3, three, reckoner));
    return new Costing(
        filling,
        thread,
        job.interfacing(),
        job.zipCount(),
        mass(job, filling),
        job.frillUsedLength(),
        materials,
        hours,
        costs,
        price,
        Bargain.of(
            money,
            brief.money(),
            costs,
            price,
            materials.materialsTotal(),
            hours.hoursTotal(),
            job.quantity()),
        reckoner.meanStripNet(),
        two.search(),
        three.search(),
        choices,
        ClientChoice.all(choices, brief.words()));
  }

  private static Mass mass(Job job, Filling filling) {
    // Bias strips that stretch are cut shorter than they join, and weigh what was cut.
    double cutLength = job.strip().flatLength() / job.sizes().joinGain();
    double stripArea = cutLength * job.sizes().strip().stripCutWidth();
    return Mass.of(job.brief(), job.sizes().discs(), stripArea, filling.fillEach());
  }
}
