package frillbook.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.MoneySpec;
import frillbook.brief.ProfitBasis;
import org.junit.jupiter.api.Test;

class PriceTest {
  private static final Money CENTS = new Money(2);

  private static MoneySpec spec(ProfitBasis basis, double profit, double tax, double offer) {
    return Briefs.inch()
        .with("hourly_rate", 5.25)
        .with("overhead_rate", 4 / 20.5)
        .with("profit_basis", basis.code())
        .with("profit_rate", profit)
        .with("tax_rate", tax)
        .with("tidy_step", 0)
        .with("offer_each", offer)
        .brief()
        .money();
  }

  private static Price price(MoneySpec spec, double cost, int quantity) {
    return Price.of(CENTS, spec, cost, quantity);
  }

  private static Price price(ProfitBasis basis, double profit) {
    return price(spec(basis, profit, 0, 0), 100, 1);
  }

  /**
   * Louisiana Voices, Unit VII, lesson 6: 10 of materials, two hours at 5.25 and 4 of overhead come
   * to 24.50; doubled, 49.00.
   */
  @Test
  void theCraftPriceIsThatOfTheLesson() {
    MoneySpec doubled = spec(ProfitBasis.MARKUP, 1, 0, 0);
    Costs costs = Costs.of(CENTS, doubled, 10, 2);
    assertEquals(new Costs(10.5, 4, 24.5), costs);
    assertEquals(49, price(doubled, costs.costTotal(), 1).priceEach());
  }

  /** Identity m = k/(1 + k). */
  @Test
  void aMarkupOf40PercentIsAMarginOf28Point57() {
    Price price = price(ProfitBasis.MARKUP, .4);
    assertEquals(.2857, price.marginReached(), 5e-5);
    assertEquals(140, price.netEach());
  }

  /** Identity m = k/(1 + k). */
  @Test
  void aMarginOf50PercentIsAMarkupOf100() {
    Price price = price(ProfitBasis.MARGIN, .5);
    assertEquals(1, price.markupReached(), 1e-9);
    assertEquals(200, price.netEach());
  }

  /** By hand: 100 ÷ 3 is 33.34 rounded up; 8.25 % of it 2.75055, so 2.75; three times 36.09. */
  @Test
  void theBatchPriceIsThatOfOneTimesTheirNumber() {
    Price price = price(spec(ProfitBasis.MARKUP, 0, .0825, 0), 100, 3);
    assertEquals(33.34, price.netEach());
    assertEquals(2.75, price.taxEach());
    assertEquals(36.09, price.priceEach());
    assertEquals(108.27, price.priceTotal());
    assertEquals(8.25, price.taxTotal());
    assertEquals(.02, price.profitTotal());
  }

  /** By hand: half of 108.27 is 54.14 rounded half up, which leaves 54.13. */
  @Test
  void depositAndBalanceMakeThePrice() {
    Price price = price(spec(ProfitBasis.MARKUP, 0, .0825, 0), 100, 3);
    assertEquals(54.14, price.deposit());
    assertEquals(54.13, price.balance());
  }

  @Test
  void whatCostsNothingHasNoRates() {
    Price price = price(spec(ProfitBasis.MARGIN, .5, .2, 0), 0, 5);
    assertEquals(0, price.priceTotal());
    assertEquals(0, price.markupReached());
    assertEquals(0, price.marginReached());
  }
}
