package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.DiscSizes;
import frillbook.materials.MaterialName;
import frillbook.materials.Materials;
import frillbook.money.Bargain;
import frillbook.money.Costs;
import frillbook.money.Earning;
import frillbook.money.LookCosts;
import frillbook.money.LookPrices;
import frillbook.money.Money;
import frillbook.money.Price;
import frillbook.picture.MoneyShare;
import frillbook.time.Hours;
import frillbook.time.TaskName;
import java.util.List;
import java.util.Optional;

/** Reckons the money of an order whose materials and hours are known. */
record Billing(PlannedOrder order, Materials materials, Hours hours) {

  /** {@code asks} where the profit is a possible one. */
  Bill of(List<ChoiceRow> choices, boolean asks) {
    Costs costs =
        Costs.of(money(), brief().money(), materials.materialsTotal(), hours.hoursTotal());
    Optional<Asking> asking = asks ? Optional.of(asking(costs, choices)) : Optional.empty();
    return new Bill(
        materials,
        costs,
        Bargain.of(
            money(),
            brief().money(),
            costs,
            materials.materialsTotal(),
            hours.hoursTotal(),
            order.quantity()),
        grows(),
        asking);
  }

  private Asking asking(Costs costs, List<ChoiceRow> choices) {
    Price price = Price.of(money(), brief().money(), costs.costTotal(), order.quantity());
    double materialsTotal = materials.materialsTotal();
    List<MoneyShare> shares = MoneyShare.all(materialsTotal, costs, price);
    return new Asking(
        price,
        LookPrices.of(brief(), planned(costs, price, choices)),
        Earning.of(money(), costs, price, materialsTotal, hours.hoursTotal()),
        shares,
        MoneyShare.Largest.of(shares),
        ClientChoice.of(choices.get(1), brief()),
        ClientChoice.of(choices.get(2), brief()));
  }

  private LookPrices.Planned planned(Costs costs, Price price, List<ChoiceRow> choices) {
    double band = order.sizes().rows().outerRadius() - brief().cushion().centreGap();
    return new LookPrices.Planned(
        order.rings().stitchedLength(),
        order.strip().flatLength(),
        band,
        costs,
        grows(),
        price,
        choices.stream().skip(1).flatMap(row -> row.offered().stream()).toList());
  }

  private LookCosts grows() {
    return new LookCosts(
        (1 - discShare()) * materials.charged(MaterialName.FRILL_FABRIC)
            + wages(
                TaskName.CUT_STRIPS,
                TaskName.JOIN_STRIPS,
                TaskName.FINISH_EDGE,
                TaskName.PRESS_STRIP,
                TaskName.GATHER,
                TaskName.PULL_UP)
            + materials.charged(MaterialName.THREAD),
        wages(TaskName.MARK_RINGS, TaskName.TACK, TaskName.SEW_ROWS, TaskName.TUCK_ENDS));
  }

  /** Of the frill fabric in use. */
  private double discShare() {
    DiscSizes discs = order.sizes().discs();
    double length = discs.matchingDiscCount() * discs.discArea() / order.sizes().usableWidth();
    return length / order.frillUsedLength();
  }

  /** Wages of {@code tasks}, what they take to set up left out. */
  private double wages(TaskName... tasks) {
    return hours.work(tasks) / 60 * brief().money().hourlyRate();
  }

  private Money money() {
    return Money.in(brief().money().currencyCode());
  }

  private Brief brief() {
    return order.brief();
  }
}
