package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * How {@link WorkedOrders#pricedBias} leans, by hand: its strip is 1260.334812 long, of its fabric
 * 9123.185 ÷ 144 ÷ 188.388667 = .336302 are matching discs.
 */
class LeaningsByHandTest {
  private Leanings leanings;
  private LeaningPrices prices;

  @BeforeEach
  void drawTheOrder() {
    Drawn order = Drawn.of(WorkedOrders.pricedBias()).orElseThrow();
    leanings = order.leanings();
    prices = order.leaningPrices();
  }

  /**
   * 24 strips at 1.5 minutes, 21 joins at 4, 37.810044 m hemmed at 1, pressed at 0.4, gathered
   * twice at 0.5 and pulled up at 2: 286.364195 at 15 an hour are 71.591049, and 5.38 of thread. 30
   * rings at 0.5, 18.875022 m tacked at 3 and sewn at 6, 6 ends at 1.5: 193.875200, 48.468800.
   */
  @Test
  void someCostsGrowWithTheStripAndSomeWithTheRows() {
    assertEquals(.336302, leanings.discShare(), 5e-7);
    assertEquals(76.971049, prices.stripCost(), 5e-7);
    assertEquals(48.468800, prices.rowCost(), 5e-7);
  }

  /**
   * Half a time fuller, 629.167406 × 2.5 + 2 = 1574.918515, is .249603 longer: .165661 more fabric;
   * .165661 × 25.12 + .249603 × 76.9710 = 23.3736, with 15 % of 320.54 .083857.
   */
  @Test
  void aFullerFrillTakesStripAndFabric() {
    Leanings.Fuller half = leanings.fullers().get(5);
    assertEquals(2.5, half.fullerFullness());
    assertEquals(1574.918515, half.fullerFlat(), 5e-7);
    assertEquals(1.165661, half.fullerFabric(), 5e-7);
    assertEquals(1.083857, prices.fullers().get(5).fullerPrice(), 1e-6);
  }

  /** The same strip, and a quarter more of the rows: 35.4908, with 15 % of 320.54 .127330. */
  @Test
  void closerRingsTakeRowsBesides() {
    Leanings.Closer fifth = leanings.closers().get(1);
    assertEquals(1.6, fifth.closerSpacing(), 1e-12);
    assertEquals(1574.918515, fifth.closerFlat(), 5e-7);
    assertEquals(1.165661, fifth.closerFabric(), 5e-7);
    assertEquals(1.127330, prices.closers().get(1).closerPrice(), 1e-6);
  }

  @Test
  void theyReachThreeQuartersAndThreeTenthsEitherWay() {
    assertEquals(7, leanings.fullers().size());
    assertEquals(1.25, leanings.fullers().get(0).fullerFullness());
    assertEquals(2.75, leanings.fullers().get(6).fullerFullness());
    assertEquals(1.4, leanings.closers().get(0).closerSpacing(), 1e-12);
    assertEquals(2.6, leanings.closers().get(6).closerSpacing(), 1e-12);
  }

  /** What costs nothing stays at nothing. */
  @Test
  void aPriceOfNothingDoesNotMove() {
    Briefs given = WorkedOrders.ringsAcross().with("hourly_rate", 0);
    for (String what :
        new String[] {"frill_fabric", "base_fabric", "interfacing", "fill", "thread"}) {
      given = given.with("price_" + what, 0);
    }
    LeaningPrices free = Drawn.of(given).orElseThrow().leaningPrices();
    assertEquals(1, free.fullers().get(0).fullerPrice());
    assertEquals(1, free.closers().get(6).closerPrice());
  }
}
