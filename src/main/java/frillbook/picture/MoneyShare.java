package frillbook.picture;

import frillbook.money.Costs;
import frillbook.money.Money;
import frillbook.money.Price;
import java.util.List;

/**
 * A part of the price of the order.
 *
 * @param moneyAmount in the currency; 0 where there is a loss
 * @param moneyWords both, as they stand beside the bar
 */
public record MoneyShare(String moneyPart, double moneyAmount, String moneyWords) {

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

  /** In the order of the table. */
  public static List<MoneyShare> all(Money money, double materials, Costs costs, Price price) {
    return List.of(
        of(money, "materials", materials),
        of(money, "wages", costs.labourTotal()),
        of(money, "overhead", costs.overheadTotal()),
        of(money, "profit", Math.max(0, price.profitTotal())),
        of(money, "tax", price.taxTotal()));
  }

  private static MoneyShare of(Money money, String part, double amount) {
    return new MoneyShare(part, amount, part + " " + money.say(amount));
  }
}
