package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The looks beside {@link WorkedOrders#pricedBias}, worked by hand as differences from it. A strip
 * of its run adds 3972.712851 ÷ 19 = 209.090150 cm on average.
 */
class PricedBiasChoicesTest {
  private static final Briefs ORDER = WorkedOrders.pricedBias();

  private static final Costing COSTING = WorkedOrders.work(ORDER).costing();

  private static ChoiceRow.Figures figures(int number) {
    return COSTING.choices().get(number - 1).figures().orElseThrow();
  }

  /**
   * The plan itself: as {@link WashedBiasOrderTest} and {@link PricedBiasOrderTest} work it out.
   */
  @Test
  void theFirstIsThePlanItself() {
    ChoiceRow.Figures own = figures(1);
    assertEquals(20, own.choiceStrips());
    assertEquals(18, own.choiceJoins());
    assertEquals(400, own.choiceCloth());
    assertEquals(1260.334812, own.choiceFlat(), 5e-7);
    assertEquals(429.683347, own.choiceThread(), 1e-6);
    assertEquals(10.882253, own.choiceHours(), 5e-7);
    assertEquals(25.12, own.choiceFrillCost(), 1e-9);
    assertEquals(5.37, own.choiceThreadCost(), 1e-9);
    assertEquals(69.78, own.choiceMaterials(), 1e-9);
    assertEquals(267.96, own.choiceCost(), 1e-9);
    assertEquals(419.40, own.choicePriceTotal(), 1e-9);
  }

  /**
   * Three times full: 629.167406 × 3 + 2 = 1889.502218, for three 5668.506654. Two metres are less
   * than 5668.506654 × 5 ÷ 1.05 and the overlays, over 144: 250.806069; four hold 54 strips, enough
   * by far. (5668.506654 − 4.242641) ÷ 209.090150 = 27.09: 28 strips in the run, one spare.
   */
  @Test
  void aFullerFrillTakesAsMuchMoreStrip() {
    ChoiceRow.Figures fuller = figures(2);
    assertEquals(10, fuller.choiceRings());
    assertEquals(629.167406, fuller.choiceStitched(), 5e-7);
    assertEquals(1889.502218, fuller.choiceFlat(), 5e-7);
    assertEquals(400, fuller.choiceCloth());
    assertEquals(29, fuller.choiceStrips());
    assertEquals(27, fuller.choiceJoins());
  }

  /**
   * Thread: 18.875022 m more of strip, sewn three times (gathered twice, hemmed once), and 9 joins
   * of 0.10 m, at 2.5: 143.812666, with 15 % 165.384566 more.
   *
   * <p>Minutes: 9 strips at 1.5, 9 joins at 4, 18.875022 m at 3.5 and 1: 134.437600 more.
   */
  @Test
  void aFullerFrillTakesMoreThreadAndTime() {
    assertEquals(595.067913, figures(2).choiceThread(), 1e-6);
    assertEquals(13.122879, figures(2).choiceHours(), 1e-6);
  }

  /**
   * Cloth 250.806069 ÷ 0.9 = 278.673410 cm at 12 a metre 33.44, thread 2.975340 spools 7.44, the
   * rest of 69.78 − 25.12 − 5.37 = 39.29 stays: 80.17. Wages 196.84, overhead 41.55: 318.56; × 1.3
   * ÷ 3 = 138.04, tidied 138.50, with tax 166.20.
   */
  @Test
  void aFullerFrillCostsMore() {
    ChoiceRow.Figures fuller = figures(2);
    assertEquals(33.44, fuller.choiceFrillCost(), 1e-9);
    assertEquals(7.44, fuller.choiceThreadCost(), 1e-9);
    assertEquals(80.17, fuller.choiceMaterials(), 1e-9);
    assertEquals(196.84, fuller.choiceLabour(), 1e-9);
    assertEquals(318.56, fuller.choiceCost(), 1e-9);
    assertEquals(138.50, fuller.choiceNetEach(), 1e-9);
    assertEquals(166.20, fuller.choicePriceEach(), 1e-9);
    assertEquals(498.60, fuller.choicePriceTotal(), 1e-9);
  }

  /**
   * 2.99 times full: 3 × (629.167406 × 2.99 + 2) = 5649.631632, of which one seam takes nothing:
   * 5645.388991 ÷ 209.090150 = 26.9998. With it, 27.02, another strip would be asked for.
   */
  @Test
  void aRunHasOneJoinLessThanStrips() {
    Briefs scarce = ORDER.with("choice_two_fullness", 2.99);
    ChoiceRow fuller = WorkedOrders.work(scarce).costing().choices().get(1);
    assertEquals(26, fuller.figures().orElseThrow().choiceJoins());
  }

  /**
   * Rows 2.5 apart: 8 turns, φ = 16π at the edge, 2.5 ÷ 4π × (50.265482 × 50.275429 + ln
   * 100.540911) = 503.671529; doubled and 2 is 1009.343059, for three 3028.029176. Two metres leave
   * 180 − 88 of cloth beside two bands of overlays, 92 × 144 = 13 248 cm², and the strips are
   * 3028.029176 × 5 ÷ 1.05 = 14 419; so four. (3028.029176 − 4.242641) ÷ 209.090150 = 14.46: 15
   * strips and a spare.
   */
  @Test
  void ringsFurtherApartTakeLess() {
    ChoiceRow.Figures wider = figures(3);
    assertEquals(8, wider.choiceRings());
    assertEquals(503.671529, wider.choiceStitched(), 5e-7);
    assertEquals(1009.343059, wider.choiceFlat(), 5e-7);
    assertEquals(400, wider.choiceCloth());
    assertEquals(16, wider.choiceStrips());
    assertEquals(14, wider.choiceJoins());
  }

  /**
   * Thread: 7.529753 m less of strip, three times at 2.5; 3.764876 m less of rows at 2.5 and,
   * basted, 1.2; 4 joins of 0.10 m less at 2.5: 71.403187, with 15 % 82.113665 less.
   *
   * <p>Minutes less: 4 strips at 1.5, 4 joins at 4, 7.529753 m at 4.5, 6 rings at 0.5, 3.764876 m
   * of rows at 6: 81.473145.
   */
  @Test
  void ringsFurtherApartTakeLessThreadAndTime() {
    assertEquals(347.569682, figures(3).choiceThread(), 1e-6);
    assertEquals(9.524367, figures(3).choiceHours(), 1e-6);
  }

  /**
   * Cloth (14 419.186551 + 9123.185066) ÷ 144 ÷ 0.9 = 181.654102 cm 21.80, thread 1.737848 spools
   * 4.34, with 39.29 it is 65.43. Wages 142.87, overhead 31.25: 239.55; × 1.3 ÷ 3 = 103.81, tidied
   * 104, with tax 124.80.
   */
  @Test
  void ringsFurtherApartCostLess() {
    ChoiceRow.Figures wider = figures(3);
    assertEquals(21.80, wider.choiceFrillCost(), 1e-9);
    assertEquals(4.34, wider.choiceThreadCost(), 1e-9);
    assertEquals(65.43, wider.choiceMaterials(), 1e-9);
    assertEquals(142.87, wider.choiceLabour(), 1e-9);
    assertEquals(239.55, wider.choiceCost(), 1e-9);
    assertEquals(104, wider.choiceNetEach(), 1e-9);
    assertEquals(124.80, wider.choicePriceEach(), 1e-9);
    assertEquals(374.40, wider.choicePriceTotal(), 1e-9);
  }

  /** As bought: four metres at 12, and for 1.737848 spools two at 2.50. */
  @Test
  void whatIsBoughtForALookIsWhole() {
    List<ChoiceRow> rows = WorkedOrders.work(ORDER.with("charge_as", "bought")).costing().choices();
    ChoiceRow.Figures wider = rows.get(2).figures().orElseThrow();
    assertEquals(48, wider.choiceFrillCost(), 1e-9);
    assertEquals(5, wider.choiceThreadCost(), 1e-9);
  }

  /** A frill of 3.4 over rows 2 and 2.5 apart. */
  @Test
  void aLookCoversAsMuchAsItsFrillIsHigherThanItsRowsAreApart() {
    assertEquals(1.7, COSTING.choices().get(1).choiceCover(), 1e-9);
    assertEquals(1.36, COSTING.choices().get(2).choiceCover(), 1e-9);
    assertEquals(2.5, COSTING.choices().get(2).choiceSpacing());
    assertEquals(3, COSTING.choices().get(1).choiceFullness());
  }

  @Test
  void aClientIsShownWordsRingsAndPrices() {
    Briefs unsaid = ORDER.with("choice_three_words", "").with("choice_two_words", "fuller");
    List<ClientChoice> shown = WorkedOrders.work(unsaid).costing().clientChoices();
    assertEquals("2 – fuller", shown.get(1).clientChoice());
    assertEquals("3", shown.get(2).clientChoice());
    ClientChoice.Terms terms = shown.get(2).terms().orElseThrow();
    assertEquals(2, terms.clientFullness());
    assertEquals(8, terms.clientRings());
    assertEquals(124.80, terms.clientPriceEach(), 1e-9);
    assertEquals(374.40, terms.clientPriceTotal(), 1e-9);
  }
}
