package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.BaseFabric;
import frillbook.fill.Filling;
import frillbook.materials.Interfacing;
import frillbook.materials.MaterialNeeds;
import frillbook.materials.Materials;
import frillbook.materials.Weight;
import frillbook.naming.Prefixed;
import frillbook.thread.ThreadNeed;
import frillbook.time.Hours;
import java.util.List;

/**
 * What the order takes, lasts and costs, and two other looks beside it.
 *
 * @param zipCount one for each zipped back
 * @param frillUsedLength fabric in frills and matching discs as a length of the usable width, after
 *     washing, in the unit of the brief
 * @param meanStripNet what a strip of the run adds to it on average
 * @param two search for the fabric of the second choice
 * @param three the same for the third
 * @param choices the brief itself and both others
 * @param twoDoubt why the second wants a second look, 0 for no reason
 * @param threeDoubt the same of the third
 */
public record Costing(
    ThreadNeed thread,
    Interfacing interfacing,
    int zipCount,
    Weight weight,
    double frillUsedLength,
    Hours hours,
    double meanStripNet,
    @Prefixed("two") ChoiceSearch two,
    @Prefixed("three") ChoiceSearch three,
    List<ChoiceRow> choices,
    int twoDoubt,
    int threeDoubt,
    Bill bill) {

  static Costing of(PlannedOrder order, Checks checks, BaseFabric base) {
    Brief brief = order.brief();
    Filling filling = Filling.of(brief);
    ThreadNeed thread = ThreadNeed.of(brief, order.sewing(base));
    Hours hours = Hours.of(brief, order.amounts(base));
    MaterialNeeds needs = order.needs(base, filling.bought(brief), thread.threadLength());
    Materials materials = Materials.of(brief, needs);
    Candidate two = Candidate.of(brief, brief.choices().two(brief.look()));
    Candidate three = Candidate.of(brief, brief.choices().three(brief.look()));
    ChoiceReckoner reckoner =
        new ChoiceReckoner(order, thread, hours, materials, checks.marginIsPossible());
    List<ChoiceRow> choices =
        List.of(
            ChoiceRow.of(1, Candidate.own(order), reckoner),
            ChoiceRow.of(2, two, reckoner),
            ChoiceRow.of(3, three, reckoner));
    double inset = brief.frill().stitchInset();
    return new Costing(
        thread,
        order.interfacing(),
        order.zipCount(),
        weight(order, filling),
        order.frillUsedLength(),
        hours,
        reckoner.meanStripNet(),
        two.search(),
        three.search(),
        choices,
        choices.get(1).doubt(choices.get(0), brief.words().choiceTwoWords(), inset),
        choices.get(2).doubt(choices.get(0), brief.words().choiceThreeWords(), inset),
        new Billing(order, materials, hours).of(choices, checks.marginIsPossible()));
  }

  private static Weight weight(PlannedOrder order, Filling filling) {
    // Bias strips that stretch are cut shorter than they join, and weigh what was cut.
    double cutLength = order.strip().flatLength() / order.sizes().joinGain();
    double stripArea = cutLength * order.sizes().strip().stripCutWidth();
    return Weight.of(order.brief(), order.sizes().discs(), stripArea, filling.fillEach());
  }
}
