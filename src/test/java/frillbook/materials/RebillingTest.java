package frillbook.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.money.Price;
import org.junit.jupiter.api.Test;

/**
 * An order charged anew with other lengths of frill fabric and thread.
 *
 * <p>By hand: as {@link MaterialsTest} has it, everything is 37.25, of which 23 are for frill
 * fabric and thread; 14.25 stay. Fabric is 12 a yard, a reel of 100 m 2.50, an hour 15, overhead 15
 * %.
 */
class RebillingTest {
  private static final MaterialNeeds NEEDS = new MaterialNeeds(50, 54, 18, 22.5, 20, 1, .3, 1.4);

  private static Rebilling rebilling(Briefs briefs) {
    return new Rebilling(briefs.brief(), .9, Materials.of(briefs.brief(), NEEDS), 80);
  }

  /**
   * By hand: 72 in are two yards, 24; 250 m three reels, 7.50; with the others 45.75. Two hours are
   * 30, and 15 % of 75.75 are 11.36: 87.11.
   */
  @Test
  void fabricAndThreadAreChargedAsBought() {
    assertEquals(
        new Rebilling.Cost(24, 7.5, 45.75, 30, 87.11),
        rebilling(Briefs.inch()).cost(72, 54, 250, 2));
  }

  /**
   * By hand: 54 in after washing to 0.9 were 60, 20; 250 m are 2 1/2 reels, 6.25. What else is used
   * is charged 3 for 18 in of base fabric, 2.22 for 20 of interfacing, 3 and .3 × 5 = 1.50: 9.72,
   * with both 35.97. 30 and 15 % of 65.97, 9.90, make 75.87.
   */
  @Test
  void fabricAndThreadAreChargedAsUsed() {
    Rebilling.Cost cost = rebilling(Briefs.inch().with("charge_as", "used")).cost(72, 54, 250, 2);
    assertEquals(new Rebilling.Cost(20, 6.25, 35.97, 30, 75.87), cost);
  }

  /** By hand: 30 % on top of 87.11 are 113.24, tidied 113.50. */
  @Test
  void anotherCostHasAPriceOfItsOwn() {
    Rebilling billing = rebilling(Briefs.inch());
    Price price = billing.price(billing.cost(72, 54, 250, 2), true);
    assertEquals(113.5, price.netEach());
  }

  /** By hand: at 100 for what was planned to cost 80, 87.11 come to 108.89, tidied 109. */
  @Test
  void anOwnPriceIsKeptForTheOrderItselfAndFollowsForOthers() {
    Rebilling billing = rebilling(Briefs.inch().with("own_price", 100));
    Rebilling.Cost cost = billing.cost(72, 54, 250, 2);
    assertEquals(100, billing.price(cost, true).netEach());
    assertEquals(109, billing.price(cost, false).netEach());
  }
}
