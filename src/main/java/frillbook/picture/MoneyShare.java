package frillbook.picture;

import frillbook.money.Costs;
import frillbook.money.Price;
import java.util.List;

/**
 * A part of the price of the order.
 *
 * @param moneyAmount in the currency; 0 where there is a loss
 */
public record MoneyShare(String moneyPart, double moneyAmount) {

  static List<MoneyShare> all(double materials, Costs costs, Price price) {
    return List.of(
        new MoneyShare("materials", materials),
        new MoneyShare("wages", costs.labourTotal()),
        new MoneyShare("overhead", costs.overheadTotal()),
        new MoneyShare("profit", Math.max(0, price.profitTotal())),
        new MoneyShare("tax", price.taxTotal()));
  }
}
