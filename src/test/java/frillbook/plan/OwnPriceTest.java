package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import frillbook.money.Price;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * {@link WorkedOrders#pricedBias}, three cushions that cost 320.11, at 125 each before tax and not
 * at the 139 that are worked out for them in {@link PricedBiasOrderTest}.
 */
class OwnPriceTest {
  private static final Briefs ORDER = WorkedOrders.pricedBias().with("own_price", 125);

  private static Costing costing(Briefs briefs) {
    return WorkedOrders.work(briefs).costing();
  }

  private static Price price(Briefs briefs) {
    return costing(briefs).bill().asking().orElseThrow().price();
  }

  /** A fifth of 125 is 25; three times 150 is 450, a quarter of it 112.50; 375 − 320.11 = 54.89. */
  @Test
  void allThatIsAskedFollowsFromIt() {
    Price price = price(ORDER);
    assertEquals(125, price.netEach());
    assertEquals(150, price.priceEach());
    assertEquals(450, price.priceTotal());
    assertEquals(112.50, price.deposit());
    assertEquals(54.89, price.profitTotal(), 1e-9);
  }

  /** Cost and profit still ask for 320.11 × 1.3 = 416.143. */
  @Test
  void whatProfitWouldAskIsStillSaid() {
    assertEquals(416.143, price(ORDER).wantedNet(), 1e-9);
  }

  @Test
  void itIsNotRoundedUpToATidyStep() {
    assertEquals(151.30, price(ORDER.with("own_price", 151.3)).netEach());
  }

  @Test
  void theFirstChoiceHasIt() {
    ChoiceRow own = costing(ORDER).choices().get(0);
    assertEquals(
        450, own.figures().flatMap(ChoiceRow.Figures::asked).orElseThrow().choicePriceTotal());
  }

  /**
   * The fuller one costs 373.35 as {@link PricedBiasChoicesTest} works it out: × 375 ÷ 320.11 ÷ 3 =
   * 145.7898, tidied 146, with a fifth 175.20.
   */
  @Test
  void theOtherChoicesFollowInProportion() {
    ChoiceRow fuller = costing(ORDER).choices().get(1);
    ChoiceRow.Asked asked = fuller.figures().flatMap(ChoiceRow.Figures::asked).orElseThrow();
    assertEquals(146, asked.choiceNetEach(), 1e-9);
    assertEquals(175.20, asked.choicePriceEach(), 1e-9);
  }

  @Test
  void theChosenGrainHasIt() {
    GrainsCompared grains = Plan.of(ORDER.brief()).cutting().orElseThrow();
    assertEquals(450, grains.grains().get(Grain.BIAS.ordinal()).price().orElseThrow());
  }

  /** Three of the fuller ones at 146 are 438 before tax. */
  @Test
  void aTradeClientIsShownThemBeforeTax() {
    Briefs trade = ORDER.with("trade_client", "yes");
    Asking asking = costing(trade).bill().asking().orElseThrow();
    assertEquals(new ClientChoice.Offer(146, 438), asking.two().offer().orElseThrow());
  }

  private static boolean isPlausible(Briefs briefs) {
    return Plan.of(briefs.brief()).priceIsPlausible();
  }

  /** Each costs 320.11 ÷ 3, so 106.71. Twenty times that is 2134.20. */
  @ParameterizedTest
  @CsvSource({"106.70, false", "106.71, true", "2134.20, true", "2134.21, false"})
  void aPriceUnderCostOrFarAboveItIsDoubted(double own, boolean plausible) {
    assertEquals(plausible, isPlausible(ORDER.with("own_price", own)));
  }

  /** Wages of 208.57 are 2.9885 times the materials of 69.79. */
  @ParameterizedTest
  @CsvSource({"2.98, false", "2.99, true"})
  void wagesFarFromMaterialsAreDoubted(double farOff, boolean plausible) {
    assertEquals(plausible, isPlausible(WorkedOrders.pricedBias().with("far_off", farOff)));
  }

  /** 46,353 is how spreadsheets keep 27 November 2026. */
  @ParameterizedTest
  @CsvSource({"hourly_rate", "price_frill_fabric", "price_fill", "tidy_step"})
  void aDateThatIsTypedForMoneyIsDoubted(String input) {
    assertEquals(false, isPlausible(WorkedOrders.pricedBias().with(input, 46_353)));
  }

  @Test
  void workForNothingIsNotDoubted() {
    assertEquals(true, isPlausible(WorkedOrders.pricedBias().with("hourly_rate", 0)));
  }
}
