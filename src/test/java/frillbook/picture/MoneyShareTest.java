package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
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

  /** 69.79 + 167.73 + 35.63 + 82.35 + 71.10 = 426.60. */
  @Test
  void thePriceIsSpentOnFiveThings() {
    List<MoneyShare> parts = parts(WorkedOrders.pricedBias());
    assertEquals(5, parts.size());
    assertPart(MoneyPart.MATERIALS, 69.79, parts.get(0));
    assertPart(MoneyPart.WAGES, 167.73, parts.get(1));
    assertPart(MoneyPart.OVERHEAD, 35.63, parts.get(2));
    assertPart(MoneyPart.PROFIT, 82.35, parts.get(3));
    assertPart(MoneyPart.TAX, 71.10, parts.get(4));
  }

  /** Without markup or tidying 273.15 ÷ 3 = 91.05 leave nothing. */
  @Test
  void withoutMarkupThereIsNoProfit() {
    Briefs atCost = WorkedOrders.pricedBias().with("profit_rate", 0).with("tidy_step", 0);
    assertPart(MoneyPart.PROFIT, 0, parts(atCost).get(3));
  }
}
