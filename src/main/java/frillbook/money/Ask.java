package frillbook.money;

import frillbook.brief.MoneySpec;
import frillbook.brief.ProfitBasis;
import frillbook.measure.Rounding;

/**
 * What is asked before tax for an order that may be another than the plan's.
 *
 * @param planned cost of the plan's order
 */
record Ask(Money money, MoneySpec spec, double planned, int quantity) {

  /** Price over cost, as the maker's own price says for the plan, or else the profit wanted. */
  double factor() {
    return spec.own()
        .map(own -> planned > 0 ? own.ownPrice() * quantity / planned : 0)
        .orElseGet(() -> profitable(1));
  }

  /** For all cushions that together cost {@code cost}, a price of the maker's own left out. */
  double profitable(double cost) {
    return spec.profitBasis() == ProfitBasis.MARKUP
        ? cost * (1 + spec.profitRate())
        : cost / (1 - spec.profitRate());
  }

  /** For one of them. What costs as much as the plan has the maker's own price to the coin. */
  double each(double cost) {
    boolean asPlanned = Rounding.settle(cost - planned) == 0;
    return spec.own()
        .filter(own -> asPlanned)
        .map(own -> money.round(own.ownPrice()))
        .orElseGet(() -> money.tidy(spec.tidyStep(), cost * factor() / quantity));
  }
}
