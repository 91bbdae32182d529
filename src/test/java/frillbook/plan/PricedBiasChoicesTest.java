package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The looks beside {@link WorkedOrders#pricedBias}, worked by hand as differences from it. A strip
 * of its run adds 3879.745989 ÷ 22 = 176.352090 cm on average.
 */
class PricedBiasChoicesTest {
  private static final Briefs ORDER = WorkedOrders.pricedBias();

  private Costing costing;

  @BeforeEach
  void planTheOrder() {
    costing = WorkedOrders.work(ORDER).costing();
  }

  private ChoiceRow.Figures figures(int number) {
    return costing.choices().get(number - 1).figures().orElseThrow();
  }

  /**
   * The plan itself: as {@link WashedBiasOrderTest} and {@link PricedBiasOrderTest} work it out.
   */
  @Test
  void theFirstIsThePlanItself() {
    ChoiceRow.Figures own = figures(1);
    assertEquals(23, own.choiceStrips());
    assertEquals(21, own.choiceJoins());
    assertEquals(300, own.choiceFabric());
    assertEquals(1260.334812, own.choiceFlat(), 5e-7);
    assertEquals(430.545847, own.choiceThread(), 1e-6);
    assertEquals(13.904654, own.choiceHours(), 5e-7);
    assertEquals(25.12, own.cost().frillCost(), 1e-9);
    assertEquals(5.38, own.cost().threadCost(), 1e-9);
    assertEquals(69.79, own.cost().materials(), 1e-9);
    assertEquals(320.11, own.cost().cost(), 1e-9);
    assertEquals(500.40, own.asked().orElseThrow().choicePriceTotal(), 1e-9);
  }

  /**
   * Three times full: 629.167406 × 3 + 2 = 1889.502218, for three 5668.506654. The 42 strips of
   * three metres add four times 209.586450, 19 × 110 × 1.05 and 19 × 111.033621 × 1.05 less 38
   * seams, 5086.746, and 18 pairs 10.5 each, 5275.746, too little. Four metres leave 272 × 144, 54
   * strips: 17 from edge to edge, 20 to 200 and 28.31 to 198.31, 7742 without what pairs add.
   * (5668.506654 − 4.242641) ÷ 176.352090 = 32.12: 33 in the run, one spare.
   */
  @Test
  void aFullerFrillTakesAsMuchMoreStrip() {
    ChoiceRow.Figures fuller = figures(2);
    assertEquals(10, fuller.choiceRings());
    assertEquals(629.167406, fuller.choiceStitched(), 5e-7);
    assertEquals(1889.502218, fuller.choiceFlat(), 5e-7);
    assertEquals(400, fuller.choiceFabric());
    assertEquals(34, fuller.choiceStrips());
    assertEquals(32, fuller.choiceJoins());
  }

  /**
   * Thread: 18.875022 m more of strip, sewn three times (gathered twice, hemmed once), and 11 joins
   * of 0.10 m, at 2.5: 144.312666, with 15 % 165.959566 more.
   *
   * <p>Minutes: 11 strips at 1.5, 11 joins at 4, 18.875022 m hemmed at 1, pressed at 0.4, gathered
   * twice at 0.5 and pulled up at 2: 143.550098 more.
   */
  @Test
  void aFullerFrillTakesMoreThreadAndTime() {
    assertEquals(596.505413, figures(2).choiceThread(), 1e-6);
    assertEquals(16.297155, figures(2).choiceHours(), 1e-6);
  }

  /**
   * Fabric 250.806069 ÷ 0.9 = 278.673410 cm at 12 a metre 33.44, thread 2.982527 reels 7.46, the
   * rest of 69.79 − 25.12 − 5.38 = 39.29 stays: 80.19. Wages 244.46, overhead 48.70: 373.35; × 1.3
   * ÷ 3 = 161.79, tidied 162, with tax 194.40.
   */
  @Test
  void aFullerFrillCostsMore() {
    ChoiceRow.Figures fuller = figures(2);
    assertEquals(33.44, fuller.cost().frillCost(), 1e-9);
    assertEquals(7.46, fuller.cost().threadCost(), 1e-9);
    assertEquals(80.19, fuller.cost().materials(), 1e-9);
    assertEquals(244.46, fuller.cost().labour(), 1e-9);
    assertEquals(373.35, fuller.cost().cost(), 1e-9);
    assertEquals(162, fuller.asked().orElseThrow().choiceNetEach(), 1e-9);
    assertEquals(194.40, fuller.asked().orElseThrow().choicePriceEach(), 1e-9);
    assertEquals(583.20, fuller.asked().orElseThrow().choicePriceTotal(), 1e-9);
  }

  /**
   * Of the run one seam takes nothing. 2.988 times full: 3 × (629.167406 × 2.988 + 2) − 4.242641 =
   * 5641.613987, ÷ 176.352090 = 31.991; with that seam 32.01, another strip. 2.989 times full:
   * 5643.501489, ÷ 176.352090 = 32.001, asks for that strip.
   */
  @ParameterizedTest
  @CsvSource({"2.988, 31", "2.989, 32"})
  void aRunHasOneJoinLessThanStrips(double fullness, int joins) {
    Briefs scarce = ORDER.with("choice_two_more", fullness - 2);
    ChoiceRow fuller = WorkedOrders.work(scarce).costing().choices().get(1);
    assertEquals(joins, fuller.figures().orElseThrow().choiceJoins());
  }

  /** 11 strips at 1.5, 11 joins at 4, 18.875022 m at 3.4 and now 2: 162.425120 minutes more. */
  @Test
  void aFullerFrillHasMoreEdgeToFinish() {
    Briefs slower = ORDER.with("finish_edge_rate", 2);
    List<ChoiceRow> rows = WorkedOrders.work(slower).costing().choices();
    double own = rows.get(0).figures().orElseThrow().choiceHours();
    double fuller = rows.get(1).figures().orElseThrow().choiceHours();
    assertEquals(2.707085, fuller - own, 5e-7);
  }

  /**
   * Rows 2.5 apart: 8 turns, φ = 16π at the edge, 2.5 ÷ 4π × (50.265482 × 50.275429 + ln
   * 100.540911) = 503.671529; doubled and 2 is 1009.343059, for three 3028.029176. Two metres leave
   * 180 − 88 of fabric beside two bands of matching discs, 92 × 144 = 13 248 cm², and the strips
   * are 3028.029176 × 5 ÷ 1.05 = 14 419; so three. (3028.029176 − 4.242641) ÷ 176.352090 = 17.15:
   * 18 and a spare.
   */
  @Test
  void ringsFurtherApartTakeLess() {
    ChoiceRow.Figures wider = figures(3);
    assertEquals(8, wider.choiceRings());
    assertEquals(503.671529, wider.choiceStitched(), 5e-7);
    assertEquals(1009.343059, wider.choiceFlat(), 5e-7);
    assertEquals(300, wider.choiceFabric());
    assertEquals(19, wider.choiceStrips());
    assertEquals(17, wider.choiceJoins());
  }

  /**
   * Thread: 7.529753 m less of strip, three times at 2.5; 3.764876 m less of rows at 2.5 and,
   * tacked, 1.2; 4 joins of 0.10 m less at 2.5: 71.403187, with 15 % 82.113665 less.
   *
   * <p>Minutes less: 4 strips at 1.5, 4 joins at 4, 7.529753 m at 4.4, 6 rings at 0.5, 3.764876 m
   * of rows sewn at 6 and tacked at 3: 92.014798.
   */
  @Test
  void ringsFurtherApartTakeLessThreadAndTime() {
    assertEquals(348.432182, figures(3).choiceThread(), 1e-6);
    assertEquals(12.371074, figures(3).choiceHours(), 1e-6);
  }

  /**
   * Fabric (14 419.186551 + 9123.185066) ÷ 144 ÷ 0.9 = 181.654102 cm 21.80, thread 1.742161 reels
   * 4.36, with 39.29 it is 65.45. Wages 185.57, overhead 37.65: 288.67; × 1.3 ÷ 3 = 125.09, tidied
   * 125.50, with tax 150.60.
   */
  @Test
  void ringsFurtherApartCostLess() {
    ChoiceRow.Figures wider = figures(3);
    assertEquals(21.80, wider.cost().frillCost(), 1e-9);
    assertEquals(4.36, wider.cost().threadCost(), 1e-9);
    assertEquals(65.45, wider.cost().materials(), 1e-9);
    assertEquals(185.57, wider.cost().labour(), 1e-9);
    assertEquals(288.67, wider.cost().cost(), 1e-9);
    assertEquals(125.50, wider.asked().orElseThrow().choiceNetEach(), 1e-9);
    assertEquals(150.60, wider.asked().orElseThrow().choicePriceEach(), 1e-9);
    assertEquals(451.80, wider.asked().orElseThrow().choicePriceTotal(), 1e-9);
  }

  /** As bought: three metres at 12, and for 1.742161 reels two at 2.50. */
  @Test
  void whatIsBoughtForALookIsWhole() {
    List<ChoiceRow> rows = WorkedOrders.work(ORDER.with("charge_as", "bought")).costing().choices();
    ChoiceRow.Figures wider = rows.get(2).figures().orElseThrow();
    assertEquals(36, wider.cost().frillCost(), 1e-9);
    assertEquals(5, wider.cost().threadCost(), 1e-9);
  }

  /** A frill of 3.4 over rows 2 and 2.5 apart. */
  @Test
  void aLookCoversAsMuchAsItsFrillIsHigherThanItsRowsAreApart() {
    ChoiceRow.Look fuller = costing.choices().get(1).look().orElseThrow();
    ChoiceRow.Look wider = costing.choices().get(2).look().orElseThrow();
    assertEquals(1.7, fuller.choiceCover(), 1e-9);
    assertEquals(1.36, wider.choiceCover(), 1e-9);
    assertEquals(2.5, wider.choiceSpacing());
    assertEquals(3, fuller.choiceFullness());
  }

  @Test
  void aClientIsShownLooksAndPrices() {
    Asking asking = WorkedOrders.work(ORDER).costing().bill().asking().orElseThrow();
    assertEquals(ClientChoice.Beside.FULLER, asking.two().look());
    assertEquals(ClientChoice.Beside.WIDER, asking.three().look());
    assertEquals(new ClientChoice.Offer(150.60, 451.80), asking.three().offer().orElseThrow());
  }
}
