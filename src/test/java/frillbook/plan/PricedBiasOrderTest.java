package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.materials.Material;
import frillbook.money.Bargain;
import frillbook.money.Costs;
import frillbook.money.Price;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@link WorkedOrders#pricedBias} costs and asks, worked by hand. */
class PricedBiasOrderTest {
  private static final Briefs ORDER = WorkedOrders.pricedBias();

  private ChosenGrain work;

  private ChosenGrain asBought;

  @BeforeEach
  void planTheOrder() {
    work = WorkedOrders.work(ORDER);
    asBought = WorkedOrders.work(ORDER.with("charge_as", "bought"));
  }

  /** Amounts as {@link WashedBiasOrderTest} has them, times the minutes for one, and the set-up. */
  @ParameterizedTest
  @CsvSource({
    "talk, 15",
    "sample, 25",
    "cut_strips, 44.5", // 23 × 1.5 + 10
    "cut_discs, 68", // 21 × 3 + 5
    "fuse, 12", // 6 × 2
    "join_strips, 90", // 21 × 4 + 6
    "finish_edge, 44.810044", // 37.810044 × 1 + 7
    "press_strip, 15.124018", // 37.810044 × 0.4
    "gather, 48.810044", // 75.620089 × 0.5 + 11
    "pull_up, 75.620089", // 37.810044 × 2
    "mark_rings, 19", // 30 × 0.5 + 4
    "tack, 56.625067", // 18.875022 × 3
    "sew_rows, 125.250133", // 18.875022 × 6 + 12
    "tuck_ends, 9", // 6 × 1.5
    "fit_zip, 30", // 3 × 10
    "make_back, 38", // 6 × 5 + 8
    "close_edge, 10.539822", // 3.769911 × 2 + 3
    "fill_close, 54", // 3 × 15 + 9
    "finish_off, 32", // 3 × 10 + 2
    "pack, 21" // 3 × 7
  })
  void everyTaskTakesItsOwnMinutes(String name, double minutes) {
    assertEquals(minutes, WorkedOrders.task(work, name).taskMinutes(), 6e-7);
  }

  /** The sum of those: 834.279217 minutes. */
  @Test
  void theyAddUpToThirteenHoursAndFiftyFourMinutes() {
    assertEquals(13.904654, work.costing().hours().hoursTotal(), 5e-7);
    assertEquals(13, work.costing().hours().wholeHours());
    assertEquals(54, work.costing().hours().leftMinutes());
  }

  /**
   * What is needed and what is bought, as {@link WashedBiasOrderTest} has them, times the price.
   */
  @ParameterizedTest
  @CsvSource({
    "frill_fabric, 25.12, 36", // 2.093207 × 12, 3 × 12
    "base_fabric, 10.37, 12", // 1.727778 × 6, 2 × 6
    "interfacing, 5.28, 8", // 1.32 × 4, 2 × 4
    "zips, 9.60, 9.60", // 3 × 3.20
    "filling, 7.31, 10", // 1.462229 × 5, 2 × 5
    "thread, 5.38, 7.50", // 2.152729 × 2.50, 3 × 2.50
    "extra_one, 2.53, 2.75", // 2.3 × 1.10, 2.5 × 1.10
    "extra_two, 1.40, 2.40", // 7 × 0.20, 12 × 0.20
    "extra_three, 2.80, 7" // 0.4 × 7, 1 × 7
  })
  void everyMaterialIsChargedAsUsedOrAsBought(String name, double used, double bought) {
    Material charged = WorkedOrders.material(work, name);
    assertEquals(used, charged.materialCharged(), 1e-9);
    assertEquals(used, charged.materialAsUsed(), .005);
    assertEquals(bought, charged.materialAsBought(), 1e-9);
    assertEquals(bought, WorkedOrders.material(asBought, name).materialCharged(), 1e-9);
  }

  /** As {@link WorkedOrders#pricedBias} says; fabric and interfacing by the metre. */
  @ParameterizedTest
  @CsvSource({
    "frill_fabric, 1, 12",
    "base_fabric, 1, 6",
    "interfacing, 1, 4",
    "zips, 1, 3.20",
    "filling, 1, 5",
    "thread, 1, 2.50",
    "extra_one, 0.5, 1.10",
    "extra_two, 6, 0.20",
    "extra_three, 1, 7"
  })
  void everyMaterialHasItsStepAndItsPrice(String name, double step, double price) {
    Material material = WorkedOrders.material(work, name);
    assertEquals(step, material.materialStep(), 1e-12);
    assertEquals(price, material.materialPrice(), 1e-12);
  }

  private Asking asking() {
    return work.costing().bill().asking().orElseThrow();
  }

  /** 69.79 of material; 13.904654 × 15 = 208.57 wages; 15 % of both 41.75. */
  @Test
  void materialAndWagesAndOverheadAreTheCost() {
    Costs costs = work.costing().bill().costs();
    assertEquals(69.79, work.costing().bill().materials().materialsTotal(), 1e-9);
    assertEquals(208.57, costs.labourTotal(), 1e-9);
    assertEquals(41.75, costs.overheadTotal(), 1e-9);
    assertEquals(320.11, costs.costTotal(), 1e-9);
  }

  /** 95.25 of material and the same wages; 15 % of both 45.57. */
  @Test
  void whatIsLeftOverIsPaidForWhereAllThatIsBoughtIsCharged() {
    assertEquals(95.25, asBought.costing().bill().materials().materialsTotal(), 1e-9);
    assertEquals(349.39, asBought.costing().bill().costs().costTotal(), 1e-9);
  }

  /** 320.11 × 1.3 ÷ 3 = 138.71, by half euros 139; a fifth of it tax. */
  @Test
  void thePriceOfOneIsTidyBeforeTax() {
    Price price = asking().price();
    assertEquals(416.143, price.wantedNet(), 1e-9);
    assertEquals(139, price.netEach(), 1e-9);
    assertEquals(27.80, price.taxEach(), 1e-9);
    assertEquals(166.80, price.priceEach(), 1e-9);
  }

  /** Three of them; 417 − 320.11 = 96.89 profit; 500.40 ÷ 4 beforehand. */
  @Test
  void thePriceOfAllIsThreeTimesThat() {
    Price price = asking().price();
    assertEquals(417, price.netTotal(), 1e-9);
    assertEquals(83.40, price.taxTotal(), 1e-9);
    assertEquals(500.40, price.priceTotal(), 1e-9);
    assertEquals(96.89, price.profitTotal(), 1e-9);
    assertEquals(125.10, price.deposit(), 1e-9);
    assertEquals(375.30, price.balance(), 1e-9);
  }

  /**
   * 320.11 ÷ 3 = 106.703333, so 106.71, and a fifth. An hour is left (417 − 69.79 − 41.75) ÷
   * 13.904654 = 21.96818, of the offer, 3 × 100 before tax, (300 − 111.54) ÷ 13.904654 = 13.55.
   */
  @Test
  void theMakerCanComeDownToTheCost() {
    Bargain bargain = work.costing().bill().bargain();
    assertEquals(106.71, bargain.lowestNet(), 1e-9);
    assertEquals(128.05, bargain.lowestPrice(), 1e-9);
    assertEquals(21.96818, asking().earning().hourlyLeft(), 5e-6);
    assertEquals(13.5537, bargain.offerHourly(), 5e-5);
  }
}
