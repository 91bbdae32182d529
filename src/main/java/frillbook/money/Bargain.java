package frillbook.money;

import frillbook.brief.MoneySpec;

/**
 * How far the maker can come down.
 *
 * @param lowestNet for one cushion before tax: all costs, wage included, and no profit
 * @param lowestPrice the same with tax
 * @param offerHourly what the client's offer would leave for an hour, below 0 where it does not
 *     even pay materials and overhead; 0 without an offer
 */
public record Bargain(double lowestNet, double lowestPrice, double offerHourly) {

  /**
   * @param materials for all {@code quantity} cushions
   * @param hours for all of them
   */
  public static Bargain of(
      Money money, MoneySpec spec, Costs costs, double materials, double hours, int quantity) {
    double lowest = money.roundUp(costs.costTotal() / quantity);
    double spent = money.sum(materials, costs.overheadTotal());
    double offered = spec.offerEach() / (1 + spec.taxRate()) * quantity;
    return new Bargain(
        lowest,
        money.sum(lowest, money.round(lowest * spec.taxRate())),
        spec.offerEach() > 0 ? Earning.hourly(offered - spent, hours) : 0);
  }
}
