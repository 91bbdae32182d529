package frillbook.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.MoneySpec;
import frillbook.brief.ProfitBasis;
import org.junit.jupiter.api.Test;

/** Two cushions: 20 of materials, six hours at 10, a quarter for overhead, a fifth of profit. */
class EarningTest {
  private static final Money CENTS = new Money(2);

  private static double hourly(double hours) {
    MoneySpec spec =
        Briefs.inch()
            .with("hourly_rate", 10)
            .with("overhead_rate", .25)
            .with("profit_basis", ProfitBasis.MARKUP.code())
            .with("profit_rate", .2)
            .with("tax_rate", .2)
            .with("tidy_step", 0)
            .with("offer_each", 0)
            .brief()
            .money();
    Costs costs = Costs.of(CENTS, spec, 20, hours);
    Price price = Price.of(CENTS, spec, costs.costTotal(), 2);
    return Earning.of(CENTS, costs, price, 20, hours).hourlyLeft();
  }

  /** By hand: 20 + 60 + 20 = 100 of cost; the price of 120 leaves 120 − 20 − 20 = 80. */
  @Test
  void thePriceAskedLeavesMoreThanTheWage() {
    assertEquals(80 / 6.0, hourly(6), 1e-9);
  }

  @Test
  void withoutHoursThereIsNothingAnHour() {
    assertEquals(0, hourly(0));
  }
}
