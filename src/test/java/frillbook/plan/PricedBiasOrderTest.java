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
    "cut_strips, 46", // 24 × 1.5 + 10
    "cut_discs, 68", // 21 × 3 + 5
    "join_strips, 90", // 21 × 4 + 6
    "finish_edge, 44.810044", // 37.810044 × 1 + 7
    "gather, 143.335155", // 37.810044 × 3.5 + 11
    "mark_rings, 19", // 30 × 0.5 + 4
    "sew_rows, 125.250133", // 18.875022 × 6 + 12
    "make_back, 38", // 6 × 5 + 8
    "close_edge, 10.539822", // 3.769911 × 2 + 3
    "fill_close, 54", // 3 × 15 + 9
    "finish_off, 32" // 3 × 10 + 2
  })
  void everyTaskTakesItsOwnMinutes(String name, double minutes) {
    assertEquals(minutes, WorkedOrders.task(work, name).taskMinutes(), 6e-7);
  }

  /** The sum of those: 670.935155 minutes. */
  @Test
  void theyAddUpToElevenHoursAndElevenMinutes() {
    assertEquals(11.182253, work.costing().hours().hoursTotal(), 5e-7);
    assertEquals(11, work.costing().hours().wholeHours());
    assertEquals(11, work.costing().hours().leftMinutes());
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

  private Asking asking() {
    return work.costing().bill().asking().orElseThrow();
  }

  /** 69.79 of material; 11.182253 × 15 = 167.73 wages; 15 % of both 35.63. */
  @Test
  void materialAndWagesAndOverheadAreTheCost() {
    Costs costs = work.costing().bill().costs();
    assertEquals(69.79, work.costing().bill().materials().materialsTotal(), 1e-9);
    assertEquals(167.73, costs.labourTotal(), 1e-9);
    assertEquals(35.63, costs.overheadTotal(), 1e-9);
    assertEquals(273.15, costs.costTotal(), 1e-9);
  }

  /** 95.25 of material and the same wages; 15 % of both 39.45. */
  @Test
  void whatIsLeftOverIsPaidForWhereAllThatIsBoughtIsCharged() {
    assertEquals(95.25, asBought.costing().bill().materials().materialsTotal(), 1e-9);
    assertEquals(302.43, asBought.costing().bill().costs().costTotal(), 1e-9);
  }

  /** 273.15 × 1.3 ÷ 3 = 118.37, by half euros 118.50; a fifth of it tax. */
  @Test
  void thePriceOfOneIsTidyBeforeTax() {
    Price price = asking().price();
    assertEquals(355.095, price.wantedNet(), 1e-9);
    assertEquals(118.50, price.netEach(), 1e-9);
    assertEquals(23.70, price.taxEach(), 1e-9);
    assertEquals(142.20, price.priceEach(), 1e-9);
  }

  /** Three of them; 355.50 − 273.15 = 82.35 profit; 426.60 ÷ 4 beforehand. */
  @Test
  void thePriceOfAllIsThreeTimesThat() {
    Price price = asking().price();
    assertEquals(355.50, price.netTotal(), 1e-9);
    assertEquals(71.10, price.taxTotal(), 1e-9);
    assertEquals(426.60, price.priceTotal(), 1e-9);
    assertEquals(82.35, price.profitTotal(), 1e-9);
    assertEquals(106.65, price.deposit(), 1e-9);
    assertEquals(319.95, price.balance(), 1e-9);
  }

  /**
   * 273.15 ÷ 3 = 91.05 and a fifth. An hour is left (355.50 − 69.79 − 35.63) ÷ 11.182253 = 22.36,
   * of the offer, 3 × 100 before tax, (300 − 105.42) ÷ 11.182253 = 17.40.
   */
  @Test
  void theMakerCanComeDownToTheCost() {
    Bargain bargain = work.costing().bill().bargain();
    assertEquals(91.05, bargain.lowestNet(), 1e-9);
    assertEquals(109.26, bargain.lowestPrice(), 1e-9);
    assertEquals(22.3640, asking().earning().hourlyLeft(), 5e-5);
    assertEquals(17.4008, bargain.offerHourly(), 5e-5);
  }
}
