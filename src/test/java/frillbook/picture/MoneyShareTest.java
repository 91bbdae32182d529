package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.WorkedOrders;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The price of {@link WorkedOrders#pricedBias} in its parts; by hand. */
class MoneyShareTest {
  private static List<MoneyShare> parts(Briefs briefs) {
    return Drawn.of(briefs).orElseThrow().money();
  }

  private static void assertPart(MoneyPart name, double amount, MoneyShare part) {
    assertEquals(name, part.moneyPart());
    assertEquals(amount, part.moneyAmount(), 1e-9, name.code());
  }

  /** 69.79 + 208.57 + 41.75 + 96.89 + 83.40 = 500.40. */
  @Test
  void thePriceIsSpentOnFiveThings() {
    List<MoneyShare> parts = parts(WorkedOrders.pricedBias());
    assertEquals(5, parts.size());
    assertPart(MoneyPart.MATERIALS, 69.79, parts.get(0));
    assertPart(MoneyPart.WAGES, 208.57, parts.get(1));
    assertPart(MoneyPart.OVERHEAD, 41.75, parts.get(2));
    assertPart(MoneyPart.PROFIT, 96.89, parts.get(3));
    assertPart(MoneyPart.TAX, 83.40, parts.get(4));
  }

  /** 320.11 ÷ 3 = 106.7033 is asked as 106.71; three of those are 320.13. */
  @Test
  void withoutMarkupOrTidyStepThereAreTheCentsOfRoundingUp() {
    Briefs atCost = WorkedOrders.pricedBias().with("profit_rate", 0).with("tidy_step", 0);
    assertPart(MoneyPart.PROFIT, .02, parts(atCost).get(3));
  }

  /** The parts are all of what the client pays, as long as there is no loss. */
  @Test
  void thePartsAddUpToThePrice() {
    for (Drawn one : Drawn.sample(SampleBriefs.layouts(30), 20250405)) {
      double price = one.price();
      double sum = one.money().stream().mapToDouble(MoneyShare::moneyAmount).sum();
      assertEquals(price, sum, 1e-6 * sum, one.what());
    }
  }

  private static List<MoneyShare> shares(double materials, double wages, double tax) {
    return List.of(
        new MoneyShare(MoneyPart.MATERIALS, materials),
        new MoneyShare(MoneyPart.WAGES, wages),
        new MoneyShare(MoneyPart.TAX, tax));
  }

  /** 60 of 100, and the first of two that are as large. */
  @Test
  void mostOfThePriceGoesToTheLargestPart() {
    assertEquals(
        new MoneyShare.Largest(MoneyPart.WAGES, .6), MoneyShare.Largest.of(shares(30, 60, 10)));
    assertEquals(
        new MoneyShare.Largest(MoneyPart.MATERIALS, .5), MoneyShare.Largest.of(shares(40, 40, 0)));
  }

  @Test
  void ofNothingNoPartIsAShare() {
    assertEquals(
        new MoneyShare.Largest(MoneyPart.MATERIALS, 0), MoneyShare.Largest.of(shares(0, 0, 0)));
  }
}
