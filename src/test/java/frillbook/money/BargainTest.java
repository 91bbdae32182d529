package frillbook.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.MoneySpec;
import frillbook.brief.ProfitBasis;
import org.junit.jupiter.api.Test;

/** Two cushions: 20 of materials, six hours at 10, a quarter for overhead, a fifth for tax. */
class BargainTest {
  private static final Money CENTS = new Money(2);

  private static Bargain bargain(double offer, double hours) {
    MoneySpec spec =
        Briefs.inch()
            .with("hourly_rate", 10)
            .with("overhead_rate", .25)
            .with("profit_basis", ProfitBasis.MARKUP.code())
            .with("profit_rate", .2)
            .with("tax_rate", .2)
            .with("tidy_step", 0)
            .with("offer_each", offer)
            .brief()
            .money();
    Costs costs = Costs.of(CENTS, spec, 20, hours);
    return Bargain.of(CENTS, spec, costs, 20, hours, 2);
  }

  /** By hand: 20 + 60 + 20 = 100, so 50 each and 60 with tax. */
  @Test
  void theLowestPricePaysCostsAndWage() {
    assertEquals(50, bargain(0, 6).lowestNet());
    assertEquals(60, bargain(0, 6).lowestPrice());
  }

  @Test
  void theLowestPriceOfferedLeavesTheWage() {
    assertEquals(10, bargain(60, 6).offerHourly(), 1e-9);
  }

  /** By hand: 18 with tax is 15 before, 30 for both, 10 less than materials and overhead. */
  @Test
  void aPoorOfferCostsTheMakerMoney() {
    assertEquals(-10 / 6.0, bargain(18, 6).offerHourly(), 1e-9);
  }

  @Test
  void withoutOfferOrHoursThereIsNothingAnHour() {
    assertEquals(0, bargain(0, 6).offerHourly());
    assertEquals(0, bargain(60, 0).offerHourly());
  }
}
