package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.BaseCloth;
import frillbook.fill.Filling;
import frillbook.materials.Interfacing;
import frillbook.materials.Mass;
import frillbook.materials.Materials;
import frillbook.measure.Outline;
import frillbook.naming.Prefixed;
import frillbook.picture.Leanings;
import frillbook.thread.ThreadNeed;
import frillbook.time.Hours;
import java.util.List;
import java.util.Optional;

/**
 * What the order takes, lasts and costs, and two other looks beside it.
 *
 * @param zipCount one for each zipped back
 * @param frillUsedLength cloth in frills and overlays as a length of the usable width, after
 *     washing, in the unit of the brief
 * @param meanStripNet what a strip of the run adds to it on average
 * @param two search for the cloth of the second choice
 * @param three the same for the third
 * @param choices the brief itself and both others
 * @param leanings how the cloth moves with the look
 * @param bill empty where bases or interfacing do not fit
 */
public record Costing(
    ThreadNeed thread,
    Interfacing interfacing,
    int zipCount,
    Mass mass,
    double frillUsedLength,
    Hours hours,
    double meanStripNet,
    @Prefixed("two") ChoiceSearch two,
    @Prefixed("three") ChoiceSearch three,
    List<ChoiceRow> choices,
    Leanings leanings,
    Optional<Bill> bill) {

  static Costing of(PlannedOrder order, Checks checks, Optional<BaseCloth> base) {
    Brief brief = order.brief();
    Filling filling = Filling.of(brief);
    ThreadNeed thread = ThreadNeed.of(brief, order.sewing());
    Hours hours = Hours.of(brief.times(), order.amounts());
    Optional<Materials> materials =
        base.filter(b -> checks.interfacingFits())
            .map(b -> order.needs(b, filling.fillWeight(), thread.threadLength()))
            .map(needs -> Materials.of(brief, needs));
    Candidate two = Candidate.of(brief, brief.choices().two());
    Candidate three = Candidate.of(brief, brief.choices().three());
    ChoiceReckoner reckoner =
        new ChoiceReckoner(order, thread, hours, materials, checks.marginIsPossible());
    List<ChoiceRow> choices =
        List.of(
            ChoiceRow.of(1, Candidate.own(order), reckoner),
            ChoiceRow.of(2, two, reckoner),
            ChoiceRow.of(3, three, reckoner));
    Leanings leanings = leanings(order);
    return new Costing(
        thread,
        order.interfacing(),
        order.zipCount(),
        mass(order, filling),
        order.frillUsedLength(),
        hours,
        reckoner.meanStripNet(),
        two.search(),
        three.search(),
        choices,
        leanings,
        materials.map(
            m -> new Billing(order, m, hours, leanings).of(choices, checks.marginIsPossible())));
  }

  private static Mass mass(PlannedOrder order, Filling filling) {
    // Bias strips that stretch are cut shorter than they join, and weigh what was cut.
    double cutLength = order.strip().flatLength() / order.sizes().joinGain();
    double stripArea = cutLength * order.sizes().strip().stripCutWidth();
    return Mass.of(order.brief(), order.sizes().discs(), stripArea, filling.fillEach());
  }

  private static Leanings leanings(PlannedOrder order) {
    double diameter = order.sizes().discs().baseCutDiameter();
    int overlays = order.sizes().discs().overlayCount();
    double discs = overlays * Outline.area(diameter) / order.sizes().usableWidth();
    return Leanings.of(
        order.brief(),
        new Leanings.Base(
            order.rings().stitchedLength(),
            order.strip().flatLength(),
            discs,
            order.frillUsedLength()));
  }
}
