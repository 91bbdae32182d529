package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.EdgeFinish;
import frillbook.brief.ThreadSpec;
import frillbook.brief.TimeSpec;
import frillbook.materials.Materials;
import frillbook.materials.Rebilling;
import frillbook.measure.Rounding;
import frillbook.money.Costs;
import frillbook.money.Money;
import frillbook.money.Price;
import frillbook.thread.ThreadNeed;
import frillbook.time.Hours;
import java.util.Optional;

/**
 * Reckons another look from the plan of the brief: only what the look changes is worked out anew.
 * The brief's own look gives the plan's own figures.
 */
record ChoiceReckoner(
    PlannedOrder order, ThreadNeed thread, Hours hours, Materials materials, boolean asks) {
  private static final int OWN = 1;

  ChoiceRow.Figures figures(int number, Candidate.Made made) {
    int joins = number == OWN ? order.cut().joinCount() : joins(made);
    int strips = number == OWN ? order.cut().stripCount() : strips(joins);
    Change change = new Change(order, made, strips, joins);
    double metres = thread(change);
    double time = hours(change);
    Rebilling.Cost cost = billing().cost(made.fabric(), made.used(), metres, time);
    Optional<Price> price =
        asks ? Optional.of(billing().price(cost, number == OWN)) : Optional.empty();
    return new ChoiceRow.Figures(
        made.rings(),
        made.stitched(),
        made.flat(),
        made.fabric(),
        strips,
        joins,
        metres,
        time,
        cost,
        price.map(ChoiceRow.Asked::of));
  }

  private Rebilling billing() {
    return new Rebilling(brief(), order.sizes().usableShare(), materials, planned());
  }

  private double planned() {
    Money money = Money.in(brief().money().currencyCode());
    return Costs.of(money, brief().money(), materials.materialsTotal(), hours.hoursTotal())
        .costTotal();
  }

  /** What a strip of the run adds to it on average, in the unit of the brief; above 0. */
  double meanStripNet() {
    return (order.cut().joinedLength() - order.cut().joinLoss()) / order.cut().stripsEach();
  }

  private int joins(Candidate.Made made) {
    int joined = brief().joinedStrips();
    double each = made.flat() * order.quantity() / joined - order.cut().joinLoss();
    return joined * Math.max(0, Rounding.up(each / meanStripNet()) - 1);
  }

  private int strips(int joins) {
    int joined = brief().joinedStrips();
    return joins + joined + brief().fabric().spareStrips();
  }

  private double thread(Change change) {
    ThreadSpec spec = brief().thread();
    EdgeFinish edge = brief().frill().edgeFinish();
    double lines =
        spec.gatheringRows() * spec.gatherThreadRatio()
            + change.edge() * spec.edgeThreadRatio(edge);
    double more =
        change.flatMetres() * lines
            + change.rowMetres() * (spec.threadRatio() + spec.handThreadRatio())
            + change.joinMetres() * spec.threadRatio();
    return thread.threadLength() + (1 + spec.threadWaste()) * more;
  }

  private double hours(Change change) {
    TimeSpec times = brief().times();
    double minutes =
        change.strips() * times.cutStrips().rate()
            + change.joins() * times.joinStrips().rate()
            + change.flatMetres() * stripRate(change.edge())
            + change.rings() * times.markRings().rate()
            + change.ends() * times.rates().tuckEndsRate()
            + change.rowMetres() * (times.sewRows().rate() + times.rates().tackRate());
    return hours.hoursTotal() + minutes / 60;
  }

  /** Minutes that a metre of joined strip takes; its edge is finished {@code edges} times. */
  private double stripRate(int edges) {
    TimeSpec times = brief().times();
    ThreadSpec thread = brief().thread();
    return edges * times.finishEdge().rate()
        + times.rates().pressStripRate()
        + thread.gatheringRows() * times.gatherBy(thread.gatherBy()).rate()
        + (thread.pulledUp() ? times.rates().pullUpRate() : 0);
  }

  /** Frill height over {@code spacing}. */
  double cover(double spacing) {
    return brief().frill().frillHeight() / spacing;
  }

  private Brief brief() {
    return order.brief();
  }
}
