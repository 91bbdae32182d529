package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.materials.Material;
import frillbook.money.Price;
import frillbook.naming.NamedValues;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CostingTest {
  private static final List<Briefs> SAMPLE = SampleBriefs.priced(300, 31);

  private static Costing costing(Briefs briefs) {
    return costings(briefs).findFirst().orElseThrow();
  }

  private static Stream<Costing> costings(Briefs briefs) {
    return Plan.of(briefs.brief()).work().flatMap(Work::cut).map(FrillWork::costing).stream();
  }

  /** Exact decimal sum of amounts as shown. */
  private static double sum(Stream<Double> amounts) {
    return amounts.map(BigDecimal::valueOf).reduce(BigDecimal.ZERO, BigDecimal::add).doubleValue();
  }

  @Test
  void theSampleHasEveryCurrencyAndBothEndsOfQuantity() {
    List<Briefs> planned = SAMPLE.stream().filter(b -> costings(b).findAny().isPresent()).toList();
    Set<String> found =
        planned.stream()
            .flatMap(
                b -> Stream.of(b.currency().getCurrencyCode(), "" + b.inputs().get("quantity")))
            .collect(Collectors.toSet());
    assertTrue(found.containsAll(List.of("JPY", "GBP", "KWD", "1", "50")), found::toString);
    assertTrue(planned.size() > 100, () -> planned.size() + " planned");
  }

  /** Exact decimal addition. */
  @Test
  void totalsAreTheSumsOfTheLinesShown() {
    for (Briefs briefs : SAMPLE) {
      costings(briefs).forEach(costing -> assertSums(costing, briefs));
    }
  }

  private static void assertSums(Costing costing, Briefs briefs) {
    Stream<Double> lines = costing.materials().materials().stream().map(Material::materialCharged);
    double materials = costing.materials().materialsTotal();
    var costs = costing.costs();
    Price price = costing.price();
    double quantity = briefs.brief().cushion().quantity();
    assertEquals(sum(lines), materials, briefs::toString);
    assertEquals(
        sum(Stream.of(materials, costs.labourTotal(), costs.overheadTotal())),
        costs.costTotal(),
        briefs::toString);
    assertEquals(sum(Stream.of(price.netEach(), price.taxEach())), price.priceEach());
    assertEquals(sum(Stream.of(price.netTotal(), price.taxTotal())), price.priceTotal());
    assertEquals(sum(Stream.of(price.deposit(), price.balance())), price.priceTotal());
    assertEquals(sum(Stream.of(costs.costTotal(), price.profitTotal())), price.netTotal());
    assertEquals(times(quantity, price.priceEach()), price.priceTotal(), briefs::toString);
  }

  private static double times(double quantity, double amount) {
    return BigDecimal.valueOf(amount).multiply(BigDecimal.valueOf(quantity)).doubleValue();
  }

  /** ISO 4217: none of the amounts has more decimals than its currency. */
  @Test
  void amountsAreWholeMinorUnits() {
    for (Briefs briefs : SAMPLE) {
      int places = briefs.currency().getDefaultFractionDigits();
      costings(briefs)
          .flatMap(CostingTest::amounts)
          .map(amount -> BigDecimal.valueOf(amount).stripTrailingZeros())
          .forEach(amount -> assertTrue(amount.scale() <= places, () -> amount + " " + briefs));
    }
  }

  private static Stream<Double> amounts(Costing costing) {
    Price price = costing.price();
    return Stream.of(
        costing.costs().labourTotal(),
        costing.costs().overheadTotal(),
        costing.costs().costTotal(),
        price.netEach(),
        price.taxEach(),
        price.priceTotal(),
        price.deposit(),
        price.balance(),
        costing.bargain().lowestPrice());
  }

  /** A price is never below what costs and wage come to. */
  @Test
  void thePriceCoversTheLowestPrice() {
    for (Briefs briefs : SAMPLE) {
      costings(briefs)
          .forEach(
              c -> assertTrue(c.price().netEach() >= c.bargain().lowestNet(), briefs::toString));
    }
  }

  /** What is in the cushions has been bought, for stretched bias too. */
  @Test
  void nothingIsUsedThatWasNotBought() {
    for (Briefs briefs : SAMPLE) {
      costings(briefs)
          .flatMap(costing -> costing.materials().materials().stream())
          .forEach(
              line ->
                  assertTrue(
                      line.materialNeeded() <= line.materialBought() + 1e-6,
                      () -> line + " " + briefs));
    }
  }

  @Test
  void theFirstChoiceIsThePlanItself() {
    for (Briefs briefs : SAMPLE) {
      costings(briefs).forEach(costing -> assertOwn(costing, briefs));
    }
  }

  private static void assertOwn(Costing costing, Briefs briefs) {
    ChoiceRow.Figures own = costing.choices().get(0).figures().orElseThrow();
    assertEquals(costing.thread().threadLength(), own.choiceThread(), 1e-9);
    assertEquals(costing.hours().hoursTotal(), own.choiceHours(), 1e-9);
    assertEquals(costing.materials().materialsTotal(), own.choiceMaterials(), briefs::toString);
    assertEquals(costing.costs().costTotal(), own.choiceCost(), briefs::toString);
    assertEquals(costing.price().priceTotal(), own.choicePriceTotal(), briefs::toString);
  }

  /**
   * Cloth and lengths of a look are those of a brief that has it. Strips and joins are estimates:
   * at most two off here, each worth 4 1/2 minutes and, sewn twice, 2 × 2 1/4 in of seam.
   */
  @ParameterizedTest
  @ValueSource(strings = {"across", "along", "bias"})
  void aChoiceTakesTheClothOfABriefWithItsLook(String grain) {
    Briefs own = Briefs.inch().with("grain", grain);
    Briefs asked = own.with("fullness", 3).with("ring_spacing", .75);
    ChoiceRow.Figures offered = costing(own).choices().get(2).figures().orElseThrow();
    ChoiceRow.Figures planned = costing(asked).choices().get(0).figures().orElseThrow();
    assertEquals(planned.choiceCloth(), offered.choiceCloth());
    assertEquals(planned.choiceFlat(), offered.choiceFlat());
    assertEquals(planned.choiceJoins(), offered.choiceJoins(), 2);
    assertEquals(planned.choiceHours(), offered.choiceHours(), 2 * 4.5 / 60 + 1e-9);
    assertEquals(
        planned.choiceThread(), offered.choiceThread(), 1.15 * 2.5 * 2 * 4.5 * .0254 + 1e-9);
  }

  /** By hand: no ring of 9 in fits a radius of 8 1/2 with 1/2 bare. */
  @Test
  void aLookWithoutRoomForARingDoesNotFit() {
    Costing costing = costing(Briefs.inch().with("choice_two_spacing", 9));
    assertEquals("no", costing.choices().get(1).choiceFits());
    assertTrue(costing.choices().get(1).figures().isEmpty());
    assertTrue(costing.two().straightTrials().isEmpty());
    assertEquals("fits", costing.choices().get(2).choiceFits());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fill_weight",
        "thread_length",
        "hours_total",
        "cost_total",
        "price_each",
        "price_total",
        "lowest_price",
        "finished_mass",
        "two_buy_length",
        "frill_used_length"
      })
  void otherToolsFindTheirNames(String name) {
    Object value = NamedValues.of(Plan.of(Briefs.inch().brief())).lines().get(name);
    assertTrue(value instanceof Double number && number > 0, () -> name + " is " + value);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "seam_thread",
        "material_charged",
        "task_minutes",
        "choice_price_total",
        "two_straight_abreast_per_line",
        "three_straight_stack"
      })
  void tablesHaveTheirColumns(String name) {
    List<Object> cells = NamedValues.of(Plan.of(Briefs.inch().brief())).columns().get(name);
    assertTrue(!cells.isEmpty(), name);
  }
}
