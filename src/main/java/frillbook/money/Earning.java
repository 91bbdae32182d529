package frillbook.money;

/**
 * What an hour of the work pays.
 *
 * @param hourlyLeft wage and profit that the price asked leaves for an hour; 0 where there are none
 */
public record Earning(double hourlyLeft) {

  /**
   * @param materials for all cushions
   * @param hours for all of them
   */
  public static Earning of(Money money, Costs costs, Price price, double materials, double hours) {
    double spent = money.sum(materials, costs.overheadTotal());
    return new Earning(hourly(price.netTotal() - spent, hours));
  }

  static double hourly(double left, double hours) {
    return hours > 0 ? left / hours : 0;
  }
}
