package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.SharedSample;
import frillbook.materials.Material;
import frillbook.money.Price;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CostingTest {
  private record Costed(Briefs briefs, Costing costing) {}

  private static final int BRIEFS = SampleBriefs.layouts(300);

  private static final SharedSample<List<Costed>> SHARED = new SharedSample<>(CostingTest::cost);

  private List<Costed> sample;

  private static List<Costed> cost() {
    return SampleBriefs.priced(BRIEFS, 31).stream()
        .flatMap(CostingTest::costed)
        .filter(one -> one.costing().bill().asking().isPresent())
        .toList();
  }

  @BeforeEach
  void costTheSample() {
    sample = SHARED.get();
  }

  private static Costing costing(Briefs briefs) {
    return costed(briefs).findFirst().orElseThrow().costing();
  }

  private static Stream<Costed> costed(Briefs briefs) {
    return Plan.of(briefs.brief()).cutting().flatMap(GrainsCompared::cut).stream()
        .map(work -> new Costed(briefs, work.costing()));
  }

  private static Bill bill(Costing costing) {
    return costing.bill();
  }

  private static Price price(Costing costing) {
    return bill(costing).asking().orElseThrow().price();
  }

  /** Exact decimal sum of amounts as shown. */
  private static double sum(Stream<Double> amounts) {
    return amounts.map(BigDecimal::valueOf).reduce(BigDecimal.ZERO, BigDecimal::add).doubleValue();
  }

  @Test
  void theSampleHasEveryCurrencyAndBothEndsOfQuantity() {
    assumeFalse(SampleBriefs.areScaled(), "a small sample has not everything");
    Set<String> found =
        sample.stream()
            .map(Costed::briefs)
            .flatMap(
                b -> Stream.of("currency_code", "quantity").map(name -> "" + b.inputs().get(name)))
            .collect(Collectors.toSet());
    assertTrue(found.containsAll(List.of("JPY", "GBP", "KWD", "1", "50")), found::toString);
    assertTrue(sample.size() > BRIEFS / 3, () -> sample.size() + " planned");
  }

  /** Exact decimal addition. */
  @Test
  void totalsAreTheSumsOfTheLinesShown() {
    sample.forEach(one -> assertSums(one.costing(), one.briefs()));
  }

  private static void assertSums(Costing costing, Briefs briefs) {
    Stream<Double> lines =
        bill(costing).materials().materials().stream().map(Material::materialCharged);
    double materials = bill(costing).materials().materialsTotal();
    var costs = bill(costing).costs();
    Price price = price(costing);
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
    for (Costed one : sample) {
      String code = (String) one.briefs().inputs().get("currency_code");
      int places = Currency.getInstance(code).getDefaultFractionDigits();
      amounts(one.costing())
          .map(amount -> BigDecimal.valueOf(amount).stripTrailingZeros())
          .forEach(a -> assertTrue(a.scale() <= places, () -> a + " " + one.briefs()));
    }
  }

  private static Stream<Double> amounts(Costing costing) {
    Price price = price(costing);
    return Stream.of(
        bill(costing).costs().labourTotal(),
        bill(costing).costs().overheadTotal(),
        bill(costing).costs().costTotal(),
        price.netEach(),
        price.taxEach(),
        price.priceTotal(),
        price.deposit(),
        price.balance(),
        bill(costing).bargain().lowestPrice());
  }

  /** A price is never below what costs and wage come to. */
  @Test
  void thePriceCoversTheLowestPrice() {
    for (Costed one : sample) {
      double lowest = bill(one.costing()).bargain().lowestNet();
      assertTrue(price(one.costing()).netEach() >= lowest, () -> one.briefs().toString());
    }
  }

  /** What is in the cushions has been bought, for stretched bias too. */
  @Test
  void nothingIsUsedThatWasNotBought() {
    for (Costed one : sample) {
      for (Material line : bill(one.costing()).materials().materials()) {
        boolean bought = line.materialNeeded() <= line.materialBought() + 1e-6;
        assertTrue(bought, () -> line + " " + one.briefs());
      }
    }
  }

  /**
   * Fabric and lengths of a look are those of a brief that has it. Strips and joins are estimates:
   * at most two off on straight grain, and on the bias five, where the matching disc lies in a line
   * for the one look and in a corner for the other. Each is worth 4 1/2 minutes and, sewn twice, 2
   * × 2 1/4 in of seam.
   */
  @ParameterizedTest
  @CsvSource({"crosswise, 2", "lengthwise, 2", "bias, 5"})
  void aChoiceTakesTheFabricOfABriefWithItsLook(String grain, int off) {
    Briefs own = Briefs.inch().with("grain", grain);
    Briefs asked = own.with("fullness", 3).with("ring_spacing", .75);
    ChoiceRow.Figures offered = costing(own).choices().get(2).figures().orElseThrow();
    ChoiceRow.Figures planned = costing(asked).choices().get(0).figures().orElseThrow();
    assertEquals(planned.choiceFabric(), offered.choiceFabric());
    assertEquals(planned.choiceFlat(), offered.choiceFlat());
    assertEquals(planned.choiceJoins(), offered.choiceJoins(), off);
    assertEquals(planned.choiceHours(), offered.choiceHours(), off * 4.5 / 60 + 1e-9);
    assertEquals(
        planned.choiceThread(), offered.choiceThread(), 1.15 * 2.5 * off * 4.5 * .0254 + 1e-9);
  }

  /** By hand: no ring of 9 in fits a radius of 8 1/2 with 1/2 bare. */
  @Test
  void aLookWithoutRoomForARingDoesNotFit() {
    Costing costing = costing(Briefs.inch().with("choice_two_spacing", 9));
    assertEquals(ChoiceRow.Fits.FAILS, costing.choices().get(1).choiceFits());
    assertTrue(costing.choices().get(1).figures().isEmpty());
    assertTrue(costing.two().straightTrials().isEmpty());
    assertEquals(ChoiceRow.Fits.FITS, costing.choices().get(2).choiceFits());
  }
}
