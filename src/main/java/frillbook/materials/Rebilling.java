package frillbook.materials;

import frillbook.brief.Brief;
import frillbook.brief.ChargeAs;
import frillbook.brief.PriceSpec;
import frillbook.measure.Rounding;
import frillbook.money.Costs;
import frillbook.money.Money;
import frillbook.money.Price;

/**
 * Reckons the order's money anew where frill fabric, thread and hours are others. The order's own
 * give its own cost and price, to the coin.
 *
 * @param planned cost of the order itself
 */
public record Rebilling(Brief brief, double usableShare, Materials materials, double planned) {

  /**
   * What the order costs so.
   *
   * @param frillCost frill fabric as charged
   * @param threadCost thread as charged
   * @param materials charged, all of them
   * @param labour wages
   * @param cost all costs
   */
  public record Cost(
      double frillCost, double threadCost, double materials, double labour, double cost) {}

  /**
   * The cost of the order.
   *
   * @param bought frill fabric bought
   * @param used frill fabric that goes into the cushions, after washing
   * @param metres of thread
   */
  public Cost cost(double bought, double used, double metres, double hours) {
    double frill = money().round(frill(bought, used));
    double thread = money().round(thread(metres));
    double all =
        money().sum(materials.materialsTotal(), -materials.chargedForLook(), frill, thread);
    Costs costs = Costs.of(money(), brief.money(), all, hours);
    return new Cost(frill, thread, all, costs.labourTotal(), costs.costTotal());
  }

  /** What is asked for it; {@code own} for the order itself. */
  public Price price(Cost cost, boolean own) {
    int quantity = brief.cushion().quantity();
    return own
        ? Price.of(money(), brief.money(), cost.cost(), quantity)
        : Price.beside(money(), brief.money(), cost.cost(), quantity, planned);
  }

  private double frill(double bought, double used) {
    double length = isBought() ? bought : used / usableShare;
    return length / brief.unit().unitsPerLong() * prices().frillFabric();
  }

  private double thread(double metres) {
    double reels = metres / brief.thread().reelLength();
    return (isBought() ? Rounding.up(reels) : reels) * prices().thread();
  }

  private boolean isBought() {
    return brief.materials().chargeAs() == ChargeAs.BOUGHT;
  }

  private PriceSpec prices() {
    return brief.materials().prices();
  }

  private Money money() {
    return Money.in(brief.money().currencyCode());
  }
}
