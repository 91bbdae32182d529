package frillbook.picture;

import frillbook.money.Costs;
import frillbook.money.Price;
import java.util.List;

/**
 * A part of the price of the order.
 *
 * @param moneyAmount in the currency; 0 where there is a loss
 */
public record MoneyShare(MoneyPart moneyPart, double moneyAmount) {

  /**
   * Where most of the price goes.
   *
   * @param largestPart the first of the largest parts
   * @param largestShare its share of the price; 0 where nothing is charged
   */
  public record Largest(MoneyPart largestPart, double largestShare) {
    public static Largest of(List<MoneyShare> parts) {
      double most = parts.stream().mapToDouble(MoneyShare::moneyAmount).max().orElseThrow();
      double all = parts.stream().mapToDouble(MoneyShare::moneyAmount).sum();
      MoneyPart part =
          parts.stream().filter(p -> p.moneyAmount() == most).findFirst().orElseThrow().moneyPart();
      return new Largest(part, all > 0 ? most / all : 0);
    }
  }

  /** In the order of the table. */
  public static List<MoneyShare> all(double materials, Costs costs, Price price) {
    return List.of(
        new MoneyShare(MoneyPart.MATERIALS, materials),
        new MoneyShare(MoneyPart.WAGES, costs.labourTotal()),
        new MoneyShare(MoneyPart.OVERHEAD, costs.overheadTotal()),
        new MoneyShare(MoneyPart.PROFIT, Math.max(0, price.profitTotal())),
        new MoneyShare(MoneyPart.TAX, price.taxTotal()));
  }
}
