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
 */
public record Rebilling(Brief brief, double usableShare, Materials materials) {

  /**
   * @param frill frill fabric as charged
   * @param thread thread as charged
   * @param materials charged, all of them
   */
  public record Charged(double frill, double thread, double materials) {}

  /**
   * What is charged for materials.
   *
   * @param bought frill fabric bought
   * @param used frill fabric that goes into the cushions, after washing
   * @param metres of thread
   */
  public Charged charged(double bought, double used, double metres) {
    double frill = money().round(frill(bought, used));
    double thread = money().round(thread(metres));
    double all =
        money().sum(materials.materialsTotal(), -materials.chargedForLook(), frill, thread);
    return new Charged(frill, thread, all);
  }

  public Costs costs(Charged charged, double hours) {
    return Costs.of(money(), brief.money(), charged.materials(), hours);
  }

  public Price price(double cost) {
    return Price.of(money(), brief.money(), cost, brief.cushion().quantity());
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
