package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.Said;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the pictures of {@link WorkedOrders#pricedBias} say, worked by hand from what it takes. */
class TitlesTest {
  private Said titles;

  @BeforeEach
  void planTheOrder() {
    titles = titles(WorkedOrders.pricedBias());
  }

  private static Said titles(Briefs briefs) {
    return Said.of(briefs);
  }

  /**
   * Fullness 2 is .413895 high for its length to one side (computed from the elliptic integral), so
   * .83 from crest to hollow.
   */
  @Test
  void theFlowerTellsTurnsAndRipples() {
    assertEquals("10 turns: ripples 0.83 × as deep as long", titles.line("flower_title"));
  }

  /** From 1/2 in to 8 1/2 in, by half inches: 16 turns; 12 is the most that is drawn. */
  @Test
  void theFlowerTellsHowManyOfManyRingsAreDrawn() {
    String title = titles(Briefs.inch().with("ring_spacing", .5)).line("flower_title");
    assertTrue(title.startsWith("12 of 16 turns drawn: "), title);
  }

  /** Two turns of 1 in out to 2 1/2 in, and one of them. */
  @ParameterizedTest
  @CsvSource({"1, '2 turns: no ripples'", "2, '1 turn: no ripples'"})
  void fewRingsAreAllDrawn(double spacing, String title) {
    Briefs small =
        Briefs.inch()
            .with("diameter", 6)
            .with("centre_gap", .5)
            .with("fullness", 1)
            .with("ring_spacing", spacing);
    assertEquals(title, titles(small).line("flower_title"));
  }

  /**
   * By hand: 8 in by three quarters are 10 2/3 turns; circles from 1/2 to 8 in are eleven rings.
   */
  @ParameterizedTest
  @CsvSource({"spiral,10.67 turns: ", "rings,11 rings: "})
  void aSpiralHasTurnsAndSeparateRingsAreCounted(String style, String begins) {
    String title = titles(Briefs.inch().with("row_style", style)).line("flower_title");
    assertTrue(title.startsWith(begins), title);
  }

  /**
   * Flat 40 cm, a = 20, half of 1.2185242 a³ (Mylar balloon) is .60926. A spheroid of k = .16156
   * holds 4π/3 × .16156 × .96559³ = .60926, 1/E(1 − k²) being .96559: 38.62 across, 6.24 thick. Two
   * caps of .41027 hold as much: 38.89 across, 8.09 thick. Mean width 38.76.
   */
  @Test
  void theSideTellsHowThickTheCushionIs() {
    assertEquals(
        "Filled to 50%: about 38.8 cm across and 6.2 to 8.1 cm thick, under a frill 3.4 cm high",
        titles.line("side_title"));
  }

  /** 18 in less 2 in of foam. */
  @Test
  void aFoamDiscSettlesTheSide() {
    Briefs foam = Briefs.inch().with("filling", "foam_disc").with("foam_thickness", 2);
    assertEquals(
        "With a foam disc: about 16 in across and 2 in thick, under a frill 2 in high",
        titles(foam).line("side_title"));
  }

  @Test
  void theFabricTellsItsPiecesAndItsSize() {
    assertEquals(
        "23 strips on the bias and 6 matching discs: bought 300 × 152 cm, usable 270 × 144 cm",
        titles.line("fabric_title"));
  }

  /** 45 in less two selvages, and neither matching disc nor wash. */
  @Test
  void aFabricWithoutMatchingDiscsTellsOfNone() {
    assertEquals(
        "12 strips crosswise: bought 27 × 45 in, usable 27 × 44 in",
        titles(WorkedOrders.ringsAcross()).line("fabric_title"));
  }

  /**
   * Strips of 1/2 + 1/4 in: seven frills of 755.404 in (301.7616 in of rows, computed from the
   * exact spiral), 5286.58 ÷ 51.75 = 102.2, so 103 strips, 77 1/4 in, 18 eighths of a yard.
   * Sixty-four lines have room for 63 strips.
   */
  @Test
  void moreLinesThanCanBeDrawnAreThinned() {
    Briefs narrow =
        Briefs.inch().with("frill_height", .5).with("quantity", 7).with("matching_discs", 0);
    assertEquals(
        "103 strips crosswise: bought 81 × 54 in, usable 81 × 53 in; one cut line in 2 drawn",
        titles(narrow).line("fabric_title"));
  }

  /** A dozen matching discs can be drawn. */
  @ParameterizedTest
  @CsvSource({"12, false", "13, true"})
  void moreMatchingDiscsThanCanBeDrawnAreTold(int matchingDiscs, boolean told) {
    Briefs bias = Briefs.inch().with(Grain.BIAS).with("quantity", matchingDiscs);
    String title = titles(bias).line("fabric_title");
    assertTrue(title.contains(" and " + matchingDiscs + " matching discs: bought "), title);
    assertEquals(told, title.endsWith("; 1 more not drawn"), title);
  }

  @Test
  void theBaseFabricTellsItsPiecesAndItsSize() {
    assertEquals(
        "3 bases and 6 back pieces: bought 200 × 100 cm, usable 180 × 94.1 cm",
        titles.line("base_fabric_title"));
  }

  /** Half of the area lies within 20 ÷ √2 = 14.14 cm, 7.07 turns; marks are a third apart. */
  @Test
  void theGuideTellsWhenHalfOfTheStripIsUsed() {
    assertEquals("Half of the strip is used after about 7 of 10 turns", titles.line("guide_title"));
  }

  /** 208.94 of 500.40: 41.8 %. */
  @Test
  void theMoneyTellsItsLargestPart() {
    assertEquals("About 42% of the price is wages", titles.line("money_title"));
  }

  /** Neither materials nor hours cost anything. */
  @Test
  void nothingChargedIsNoPart() {
    Briefs given =
        WorkedOrders.pricedBias()
            .with("price_frill_fabric", 0)
            .with("price_base_fabric", 0)
            .with("price_interfacing", 0)
            .with("price_zip", 0)
            .with("price_fill", 0)
            .with("price_thread", 0)
            .with("price_extra_one", 0)
            .with("price_extra_two", 0)
            .with("price_extra_three", 0)
            .with("hourly_rate", 0);
    assertEquals("Nothing is charged", titles(given).line("money_title"));
  }
}
