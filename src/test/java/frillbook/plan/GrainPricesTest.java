package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class GrainPricesTest {
  private static final int BRIEFS = SampleBriefs.layouts(100);

  private static Optional<GrainsCompared> compared(Briefs briefs) {
    return Plan.of(briefs.brief()).cutting().filter(cutting -> cutting.cut().isPresent());
  }

  private static GrainRow.Work work(Briefs briefs, Grain grain) {
    return compared(briefs).orElseThrow().grains().get(grain.ordinal()).work().orElseThrow();
  }

  private static double price(Briefs briefs, Grain grain) {
    return work(briefs, grain).asked().orElseThrow().grainPrice();
  }

  /**
   * {@link WorkedOrders#ringsAcross}, as it stands there: 12 strips and 11 joins across, 19 and 18
   * along the fabric, both from 27 in. Across it takes 369.490095 minutes, as {@link
   * RingsAcrossOrderTest} adds them up, which is 6.158168 h. Along, seven strips and joins more
   * take 7 × (1.5 + 3) = 31.5: 6.683168 h.
   */
  @ParameterizedTest
  @CsvSource({"CROSSWISE,6.158168", "LENGTHWISE,6.683168"})
  void stripsAndJoinsTakeTheirTime(Grain grain, double hours) {
    assertEquals(hours, work(WorkedOrders.ringsAcross(), grain).grainHours(), 5e-7);
  }

  /**
   * The same. Bought are 0.75 yd at 12 and 0.75 at 6, 0.875 at 4, a bag at 5, a reel at 2.50
   * (66.075 m, and along 7 × 2 1/4 in × 0.0254 × 2.5 × 1.15 = 1.150 m more): 24.50. Across, wages
   * 15 × 6.158168 = 92.37, overhead 15 % of 116.87, 17.53: 134.40. With 30 % 174.72, for one 87.36,
   * which is tidied up to 87.50: 175.00. Along, wages 100.25, overhead 18.71: 143.46; with 30 %
   * 186.50, for one 93.25, tidied up to 93.50: 187.00.
   */
  @ParameterizedTest
  @CsvSource({"CROSSWISE,175", "LENGTHWISE,187"})
  void stripsAndJoinsCostTheirWages(Grain grain, double price) {
    assertEquals(price, price(WorkedOrders.ringsAcross(), grain));
  }

  /**
   * One circle of 4 in, 2π × 4 + 0.5 = 25.632741, one and a half times and 1 for the ends:
   * 39.449112. Across 44 in one strip is enough and nothing is joined. Along, 13 1/2 in is the
   * first length with a strip of 12, and each adds 13: (39.449112 − 0.5) ÷ 13 = 2.996, three
   * strips. Two strips more take 3 min, two joins 6, and setting up for them 5: 14 min.
   */
  @Test
  void joiningIsSetUpForWhereThereIsSomethingToJoin() {
    Briefs ring =
        WorkedOrders.ringsAcross()
            .with("quantity", 1)
            .with("centre_gap", 0)
            .with("ring_spacing", 4)
            .with("edge_clearance", 1)
            .with("fullness", 1.5);
    assertOver(14.0 / 60, ring);
    assertOver(14.0 / 60, ring.with(Grain.LENGTHWISE));
  }

  private static void assertOver(double hours, Briefs briefs) {
    double across = work(briefs, Grain.CROSSWISE).grainHours();
    assertEquals(hours, work(briefs, Grain.LENGTHWISE).grainHours() - across, 1e-9);
  }

  /** The plan in that grain is another way to the same figures. */
  @Test
  void anotherGrainCostsWhatThePlanInThatGrainCosts() {
    long found =
        SampleBriefs.priced(BRIEFS, 47).stream()
            .mapToLong(
                briefs ->
                    Arrays.stream(Grain.values())
                        .mapToLong(to -> assertLikeItsOwn(briefs, to))
                        .sum())
            .sum();
    assertTrue(found > BRIEFS, found + " compared");
  }

  /** How many plans of {@code briefs} in another grain were compared with the one in {@code to}. */
  private static long assertLikeItsOwn(Briefs briefs, Grain to) {
    Optional<ChosenGrain> own = compared(briefs.with(to)).flatMap(GrainsCompared::cut);
    return own.stream()
        .flatMap(
            plan -> Arrays.stream(Grain.values()).filter(from -> isLike(briefs, from, to, plan)))
        .count();
  }

  private static boolean isLike(Briefs briefs, Grain from, Grain to, ChosenGrain own) {
    var told =
        compared(briefs.with(from)).map(c -> c.grains().get(to.ordinal()).work().orElseThrow());
    told.ifPresent(
        work -> {
          String what = from + " " + to + " " + briefs;
          assertEquals(own.costing().hours().hoursTotal(), work.grainHours(), 1e-7, what);
          assertEquals(
              own.costing().bill().asking().map(a -> a.price().priceTotal()),
              work.asked().map(GrainRow.Asked::grainPrice),
              what);
        });
    return told.isPresent();
  }

  private static GrainRow row(Grain grain, Double price) {
    Optional<GrainRow.Work> work =
        Optional.ofNullable(price).map(p -> new GrainRow.Work(2, 30, 100, 5, null, asked(p)));
    return new GrainRow(grain, GrainRow.Fits.FITS, true, Optional.empty(), work);
  }

  private static Optional<GrainRow.Asked> asked(double price) {
    return Optional.of(new GrainRow.Asked(price, price));
  }

  private static GrainPrices prices(Grain chosen, Double across, Double along, Double bias) {
    return GrainPrices.of(
        Briefs.inch().with(chosen).brief(),
        List.of(row(Grain.CROSSWISE, across), row(Grain.LENGTHWISE, along), row(Grain.BIAS, bias)));
  }

  /** 1594 − 1283 = 311, of 1594 0.195107. */
  @Test
  void theCheapestGrainSaysWhatItSaves() {
    var cheapest = prices(Grain.CROSSWISE, 1594.0, 1283.0, null).cheapest().orElseThrow();
    assertEquals(Grain.LENGTHWISE, cheapest.cheapestGrain());
    assertEquals(1283, cheapest.cheapestPrice());
    assertEquals(311, cheapest.cheapestSaves());
    assertEquals(.195107, cheapest.cheapestSavesShare(), 5e-7);
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void ofEqualPricesTheChosenGrainIsTheCheapest(Grain chosen) {
    var cheapest = prices(chosen, 20.0, 20.0, 20.0).cheapest().orElseThrow();
    assertEquals(chosen, cheapest.cheapestGrain());
    assertEquals(0, cheapest.cheapestSaves());
  }

  @Test
  void ofOthersThatAreEquallyCheapTheFirstIs() {
    var cheapest = prices(Grain.BIAS, 19.0, 19.0, 20.0).cheapest().orElseThrow();
    assertEquals(Grain.CROSSWISE, cheapest.cheapestGrain());
    var along = prices(Grain.CROSSWISE, 20.0, 19.0, 19.0).cheapest().orElseThrow();
    assertEquals(Grain.LENGTHWISE, along.cheapestGrain());
  }

  @Test
  void withoutAPriceNoGrainIsTheCheapest() {
    assertEquals(Optional.empty(), prices(Grain.BIAS, 19.0, 19.0, null).cheapest());
    assertTrue(prices(Grain.BIAS, 19.0, 19.0, null).chosenIsCheap(0));
  }

  /** 1 of 20 is 5 %. */
  @Test
  void anotherGrainIsToldFromTheShareOnThatTheMakerSets() {
    GrainPrices prices = prices(Grain.CROSSWISE, 20.0, 19.0, 21.0);
    assertFalse(prices.chosenIsCheap(.05));
    assertTrue(prices.chosenIsCheap(.0501));
    assertFalse(prices.chosenIsCheap(0));
    assertTrue(prices(Grain.LENGTHWISE, 20.0, 19.0, 21.0).chosenIsCheap(0));
  }

  @Test
  void whatCostsNothingIsCheapInAnyGrain() {
    GrainPrices free = prices(Grain.CROSSWISE, 0.0, 0.0, 0.0);
    assertEquals(0, free.cheapest().orElseThrow().cheapestSavesShare());
    assertTrue(free.chosenIsCheap(0));
  }

  /** By hand: 12 of 187 are 6.417 %. */
  @Test
  void aDearGrainWantsASecondLookButIsPlanned() {
    Briefs along = WorkedOrders.ringsAcross().with(Grain.LENGTHWISE);
    assertEquals(Plan.Flag.LOOK_AGAIN, flag(along.with("cheaper_share", .0641)));
    assertEquals(Plan.Flag.READY, flag(along.with("cheaper_share", .0642)));
  }

  private static Plan.Flag flag(Briefs briefs) {
    return Plan.of(briefs.brief()).checkFlag();
  }

  /** Seven joins more, of 2 1/4 in, as above; the same with French joins twice. */
  @ParameterizedTest
  @CsvSource({"plain,1.15014375", "french,2.3002875"})
  void joinsTakeTheirThread(String finish, double more) {
    Briefs rings =
        WorkedOrders.ringsAcross()
            .with("join_finish", finish)
            .with("join_allowance", .25)
            .with("join_second_allowance", 0);
    assertEquals(
        more,
        work(rings, Grain.LENGTHWISE).grainThread() - work(rings, Grain.CROSSWISE).grainThread(),
        5e-7);
    Briefs along = rings.with(Grain.LENGTHWISE);
    assertEquals(
        more,
        work(along, Grain.LENGTHWISE).grainThread() - work(along, Grain.CROSSWISE).grainThread(),
        5e-7);
  }

  /** At 90 for what costs 67.20, what costs 71.73 along is 96.07, tidied up to 96.50. */
  @Test
  void anOwnPriceIsKeptInTheChosenGrain() {
    Briefs own = WorkedOrders.ringsAcross().with("own_price", 90);
    assertEquals(180, price(own, Grain.CROSSWISE));
    assertEquals(193, price(own, Grain.LENGTHWISE));
  }

  @Test
  void everyGrainHasItsHoursAndItsPrice() {
    GrainPrices prices = compared(WorkedOrders.ringsAcross()).orElseThrow().prices();
    assertEquals(6.683168, prices.lengthwise().orElseThrow().hours(), 5e-7);
    assertEquals(187, prices.lengthwise().orElseThrow().asked().orElseThrow().price());
    assertEquals(175, prices.crosswise().orElseThrow().asked().orElseThrow().price());
  }
}
