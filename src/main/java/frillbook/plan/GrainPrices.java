package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.measure.Rounding;
import frillbook.money.Money;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.Optional;

/**
 * What the order takes and costs in every grain that fits, and in which it is cheapest.
 *
 * @param cheapest empty where there is no price
 */
public record GrainPrices(
    @Prefixed("crosswise") Optional<InGrain> crosswise,
    @Prefixed("lengthwise") Optional<InGrain> lengthwise,
    @Prefixed("bias") Optional<InGrain> bias,
    Optional<Cheapest> cheapest) {

  /**
   * @param hours of the whole order
   * @param asked empty where there is no price
   */
  public record InGrain(double hours, Optional<Asked> asked) {}

  /**
   * @param price of the whole order, with tax
   */
  public record Asked(double price) {}

  /**
   * @param cheapestPrice the smallest price of the order
   * @param cheapestGrain the chosen grain where it has that price, else the first that has
   * @param cheapestSaves by how much the order is cheaper than in the chosen grain
   * @param cheapestSavesShare the same as a share of the price in the chosen grain
   */
  public record Cheapest(
      double cheapestPrice, Grain cheapestGrain, double cheapestSaves, double cheapestSavesShare) {}

  static GrainPrices of(Brief brief, List<GrainRow> rows) {
    return new GrainPrices(
        inGrain(rows, Grain.CROSSWISE),
        inGrain(rows, Grain.LENGTHWISE),
        inGrain(rows, Grain.BIAS),
        rows.get(brief.fabric().grain().ordinal()).price().map(own -> cheapest(brief, rows, own)));
  }

  private static Optional<InGrain> inGrain(List<GrainRow> rows, Grain grain) {
    GrainRow row = rows.get(grain.ordinal());
    return row.work().map(work -> new InGrain(work.grainHours(), row.price().map(Asked::new)));
  }

  private static Cheapest cheapest(Brief brief, List<GrainRow> rows, double own) {
    double least =
        rows.stream().flatMap(row -> row.price().stream()).min(Double::compare).orElseThrow();
    boolean isOwn = Rounding.settle(own - least) <= 0;
    double saves = Money.in(brief.money().currencyCode()).sum(own, -least);
    return new Cheapest(
        least,
        isOwn ? brief.fabric().grain() : first(rows, least),
        saves,
        own > 0 ? saves / own : 0);
  }

  private static Grain first(List<GrainRow> rows, double price) {
    return rows.stream()
        .filter(row -> row.price().filter(asked -> asked == price).isPresent())
        .findFirst()
        .orElseThrow()
        .grainName();
  }

  /** Whether no other grain is cheaper by {@code share} of the price; true where there is none. */
  boolean chosenIsCheap(double share) {
    return cheapest
        .map(c -> c.cheapestSaves() <= 0 || Rounding.settle(c.cheapestSavesShare() - share) < 0)
        .orElse(true);
  }
}
