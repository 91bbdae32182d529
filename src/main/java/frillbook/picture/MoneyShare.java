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

  /**
   * Where most of the price goes.
   *
   * @param largestPart the first of the largest parts
   * @param largestShare its share of the price; 0 where nothing is charged
   */
  public record Largest(String largestPart, double largestShare) {
    public static Largest of(List<MoneyShare> parts) {
      double most = parts.stream().mapToDouble(MoneyShare::moneyAmount).max().orElseThrow();
      double all = parts.stream().mapToDouble(MoneyShare::moneyAmount).sum();
      String part =
          parts.stream().filter(p -> p.moneyAmount() == most).findFirst().orElseThrow().moneyPart();
      return new Largest(part, all > 0 ? most / all : 0);
    }
  }

  public static List<MoneyShare> all(double materials, Costs costs, Price price) {
    return List.of(
        new MoneyShare("materials", materials),
        new MoneyShare("wages", costs.labourTotal()),
        new MoneyShare("overhead", costs.overheadTotal()),
        new MoneyShare("profit", Math.max(0, price.profitTotal())),
        new MoneyShare("tax", price.taxTotal()));
  }
}
