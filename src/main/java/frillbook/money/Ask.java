package frillbook.money;

import frillbook.brief.MoneySpec;
import frillbook.brief.ProfitBasis;

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

  /** For one of them, with the maker's own price to the coin where it is the order as planned. */
  double each(double cost, boolean asPlanned) {
    return spec.own()
        .filter(own -> asPlanned)
        .map(own -> money.round(own.ownPrice()))
        .orElseGet(() -> money.tidy(spec.tidyStep(), cost * factor() / quantity));
  }
}
