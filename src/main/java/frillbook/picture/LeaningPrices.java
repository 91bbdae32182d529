package frillbook.picture;

import frillbook.brief.Brief;
import java.util.List;

/**
 * About how the price of the order moves with the look, as shares of the plan: what grows with the
 * strip or with the rows is scaled, the rest stays.
 *
 * @param stripCost what grows with the flat length beside fabric: wages and thread
 * @param rowCost what grows with the rows alone: wages
 * @param fullerMorePrice how much more half a time fuller; 0 for no more than the plan
 * @param closerMorePrice how much more with rings a fifth closer
 */
public record LeaningPrices(
    double stripCost,
    double rowCost,
    double fullerMorePrice,
    double closerMorePrice,
    List<FullerPrice> fullers,
    List<CloserPrice> closers) {

  /** With another fullness; 1 is the plan's price. */
  public record FullerPrice(double fullerPrice) {}

  /** With another ring spacing; 1 is the plan's price. */
  public record CloserPrice(double closerPrice) {}

  /**
   * What the estimate starts from.
   *
   * @param fabricCost charged for frill fabric
   */
  public record Base(
      double flatLength, double fabricCost, double stripCost, double rowCost, double costTotal) {}

  public static LeaningPrices of(Brief brief, Leanings fabric, Base base) {
    double planned = brief.cushion().ringSpacing();
    double overhead = 1 + brief.money().overheadRate();
    List<FullerPrice> fullers =
        fabric.fullers().stream()
            .map(to -> price(base, overhead, to.fullerFlat(), to.fullerFabric(), 1))
            .map(FullerPrice::new)
            .toList();
    List<CloserPrice> closers =
        fabric.closers().stream()
            .map(
                to ->
                    price(
                        base,
                        overhead,
                        to.closerFlat(),
                        to.closerFabric(),
                        planned / to.closerSpacing()))
            .map(CloserPrice::new)
            .toList();
    return new LeaningPrices(
        base.stripCost(),
        base.rowCost(),
        fullers.get(Leanings.HALF_A_TIME_FULLER).fullerPrice() - 1,
        closers.get(Leanings.A_FIFTH_CLOSER).closerPrice() - 1,
        fullers,
        closers);
  }

  /** {@code rows} is the sewn length over the planned one. */
  private static double price(Base base, double overhead, double flat, double fabric, double rows) {
    double more =
        (fabric - 1) * base.fabricCost()
            + (flat / base.flatLength() - 1) * base.stripCost()
            + (rows - 1) * base.rowCost();
    return base.costTotal() > 0 ? 1 + overhead * more / base.costTotal() : 1;
  }
}
