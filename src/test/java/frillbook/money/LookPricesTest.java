package frillbook.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.plan.Bill;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * About what one cushion of {@link WorkedOrders#pricedBias} costs with another look, by hand: three
 * of them cost 320.11, their strips are 1260.334812 long before gathering, of their fabric 9123.185
 * ÷ 144 ÷ 188.388667 = .336302 are matching discs.
 */
class LookPricesTest {
  private static final Briefs ORDER = WorkedOrders.pricedBias();

  private static Bill bill(Briefs briefs) {
    return WorkedOrders.work(briefs).costing().bill();
  }

  private static LookPrices looks(Briefs briefs) {
    return bill(briefs).asking().orElseThrow().looks();
  }

  private static void assertPrices(LookPrices.AtSpacing row, double... prices) {
    assertEquals(prices[0], row.flatterPrice().orElseThrow(), 1e-9);
    assertEquals(prices[1], row.samePrice().orElseThrow(), 1e-9);
    assertEquals(prices[2], row.fullerPrice().orElseThrow(), 1e-9);
  }

  /**
   * 23 strips at 1.5 minutes, 21 joins at 4, 37.810044 m hemmed at 1, pressed at 0.4, gathered
   * twice at 0.5 and pulled up at 2: 284.864195 at 15 an hour are 71.216049; 5.38 of thread; of the
   * fabric 25.12 × (1 − .336302) = 16.672094. 30 rings at 0.5, 18.875022 m tacked at 3 and sewn at
   * 6, 6 ends at 1.5: 193.875200 minutes, 48.468800.
   */
  @Test
  void someCostsGrowWithTheStripAndSomeWithTheRows() {
    LookCosts grows = bill(ORDER).grows();
    assertEquals(93.268143, grows.stripCost(), 1e-5);
    assertEquals(48.468800, grows.rowCost(), 5e-7);
  }

  /**
   * Strips of 629.167406 × 1.5 + 2 and × 2.5 + 2 are .249603 shorter and longer: 93.268143 ×
   * .249603 = 23.2800, with 15 % on top 26.7720. So 293.3380 and 346.8820; × 1.3 ÷ 3 = 127.11 and
   * 150.32, tidied 127.50 and 150.50, with a fifth of tax 153 and 180.60. The plan's own price is
   * 139 and tax.
   */
  @Test
  void theRingsOfThePlanHaveItsPriceInTheMiddle() {
    assertPrices(looks(ORDER).looks().get(1), 153, 166.80, 180.60);
  }

  /**
   * Rings 1.6 apart have a quarter more rows, 12.1172. Strips of 786.459258 × 1.5 + 2, × 2 + 2 and
   * × 2.5 + 2 are −.062401, .249603 and .561607 longer: −5.8200, 23.2800 and 52.3800. With 15 %
   * 327.3518, 360.8168 and 394.2818; × 1.3 ÷ 3 = 141.85, 156.35, 170.86; tidied 142, 156.50, 171.
   */
  @Test
  void closerRingsTakeStripAndRows() {
    assertEquals(1.6, looks(ORDER).looks().get(0).lookSpacing(), 1e-12);
    assertPrices(looks(ORDER).looks().get(0), 170.40, 187.80, 205.20);
  }

  /**
   * Rings 2.4 apart have a sixth fewer rows, 8.0781 less. Strips of 524.306172 × 1.5 + 2, × 2 + 2
   * and × 2.5 + 2 are −.374405, −.166402 and .041600 longer: −34.9201, −15.5200 and 3.8800. With 15
   * % 270.6621, 292.9722 and 315.2822; × 1.3 ÷ 3 = 117.29, 126.95, 136.62; tidied 117.50, 127, 137.
   */
  @Test
  void widerRingsTakeLess() {
    assertEquals(2.4, looks(ORDER).looks().get(2).lookSpacing(), 1e-12);
    assertPrices(looks(ORDER).looks().get(2), 141, 152.40, 164.40);
  }

  /** 180.60 ÷ 166.80 and 187.80 ÷ 166.80. */
  @Test
  void howMuchMoreIsSaidOfThePricesThemselves() {
    assertEquals(.082734, looks(ORDER).fullerMorePrice(), 5e-7);
    assertEquals(.125899, looks(ORDER).closerMorePrice(), 5e-7);
  }

  /**
   * At 125 each before tax, 125 ÷ 106.7033 for what costs 1: half a time fuller 125 × 346.8820 ÷
   * 320.11 = 135.45, tidied 135.50. The plan's own is not tidied.
   */
  @Test
  void anOwnPriceStandsInTheMiddleAndTheOthersFollow() {
    LookPrices own = looks(ORDER.with("own_price", 125.3));
    assertEquals(150.36, own.looks().get(1).samePrice().orElseThrow(), 1e-9);
    LookPrices.AtSpacing rows = looks(ORDER.with("own_price", 125)).looks().get(1);
    assertEquals(162.60, rows.fullerPrice().orElseThrow(), 1e-9);
  }

  /** Nobody is told two prices of one look. */
  @ParameterizedTest
  @CsvSource({"two, 0.5, 2", "three, 0.5, 3"})
  void aChoiceWithTheLookHasItsPriceHereToo(String choice, double more, int number) {
    Briefs briefs =
        ORDER
            .with("choice_two_more", 1)
            .with("choice_three_spacing", 2)
            .with("choice_" + choice + "_more", more);
    double asked =
        WorkedOrders.work(briefs)
            .costing()
            .choices()
            .get(number - 1)
            .figures()
            .orElseThrow()
            .asked()
            .orElseThrow()
            .choicePriceEach();
    assertEquals(number, looks(briefs).fullerChoice());
    assertEquals(0, looks(briefs).flatterChoice());
    assertEquals(asked, looks(briefs).looks().get(1).fullerPrice().orElseThrow(), 1e-9);
  }

  /** With other rings a choice has another look. */
  @Test
  void aChoiceWithOtherRingsLeavesTheEstimate() {
    Briefs wider = ORDER.with("choice_two_more", .5).with("choice_two_spacing", 2.5);
    assertEquals(0, looks(wider).fullerChoice());
    assertEquals(180.60, looks(wider).looks().get(1).fullerPrice().orElseThrow(), 1e-9);
  }

  /** Half a time flatter than 1.49 is not gathered all round; than 1.5 it just is. */
  @ParameterizedTest
  @CsvSource({"1.49, 0", "1.5, 3"})
  void aFrillThatIsNotGatheredHasNoPrice(double fullness, int priced) {
    List<LookPrices.AtSpacing> looks = looks(ORDER.with("fullness", fullness)).looks();
    assertEquals(priced, looks.stream().filter(row -> row.flatterPrice().isPresent()).count());
  }

  /** Four fifths of 2 are 1.6: raw edges that reach so far lie under the next ring. */
  @Test
  void ringsOnTheRawEdgesBeforeThemHaveNoPrice() {
    LookPrices none = looks(ORDER.with("stitch_inset", 1.6));
    assertEquals(OptionalDouble.empty(), none.looks().get(0).samePrice());
    assertEquals(0, none.closerMorePrice());
  }

  /** From a gap of 18 to 20 there is room for rings 2 apart and for no wider ones. */
  @Test
  void ringsWithoutRoomHaveNoPrice() {
    List<LookPrices.AtSpacing> looks = looks(ORDER.with("centre_gap", 18)).looks();
    assertEquals(OptionalDouble.empty(), looks.get(2).fullerPrice());
    assertEquals(true, looks.get(0).fullerPrice().isPresent());
  }

  /** What costs nothing stays at nothing. */
  @Test
  void aPriceOfNothingDoesNotMove() {
    Briefs free = WorkedOrders.ringsAcross().with("hourly_rate", 0);
    for (String what : List.of("frill_fabric", "base_fabric", "interfacing", "fill", "thread")) {
      free = free.with("price_" + what, 0);
    }
    assertPrices(looks(free).looks().get(0), 0, 0, 0);
    assertEquals(0, looks(free).fullerMorePrice());
  }

  /**
   * A plan made anew for the look buys whole steps and rounds its rings up; within an eighth of it.
   */
  @Test
  void theEstimateComesNearAPlanMadeAnew() {
    Briefs briefs =
        Briefs.inch().with("quantity", 4).with("charge_as", "used").with("tidy_step", 0);
    for (LookPrices.AtSpacing row : looks(briefs).looks()) {
      Briefs spaced = briefs.with("ring_spacing", row.lookSpacing());
      double[] said = {
        row.flatterPrice().orElseThrow(),
        row.samePrice().orElseThrow(),
        row.fullerPrice().orElseThrow()
      };
      for (int i = 0; i < said.length; i++) {
        Briefs anew = spaced.with("fullness", 2 + i / 2.0);
        double price = bill(anew).asking().orElseThrow().price().priceEach();
        assertEquals(1, said[i] / price, .125, row.lookSpacing() + ", " + i);
      }
    }
  }
}
