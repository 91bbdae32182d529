package frillbook.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.discs.DiscSizes;
import frillbook.measure.LengthUnit;
import org.junit.jupiter.api.Test;

class WeightTest {
  private static Weight weight(Briefs briefs) {
    Brief brief = briefs.brief();
    return Weight.of(brief, DiscSizes.of(brief), 1296, 150);
  }

  /** Computed from exact units: 1 oz/yd² = 33.90575 g/m², 1 oz = 28.349523125 g. */
  @Test
  void aSquareYardAtAnOunceASquareYardWeighsAnOunce() {
    assertEquals(28.349523, Weight.grams(LengthUnit.INCH, 36 * 36, 33.90575), 5e-6);
    assertEquals(33.90575, Weight.grams(LengthUnit.CM, 100 * 100, 33.90575), 1e-9);
  }

  /**
   * By hand: bases and matching discs are cut at 19 7/8 in, 0.200157 m², backs at 19 in, 0.182921
   * m²; the strip's square yard is 0.836127 m². (0.836127 + 0.200157) × 80 = 82.90 g, (0.200157 +
   * 0.182921) × 150 = 57.46 g, 0.200157 × 60 = 12.01 g, and 150 g of filling.
   */
  @Test
  void aCushionWeighsItsFabricsAndItsFilling() {
    Weight weight = weight(Briefs.inch());
    assertEquals(82.90, weight.frillWeight(), .005);
    assertEquals(57.46, weight.baseWeight(), .005);
    assertEquals(12.01, weight.interfacingPart(), .005);
    assertEquals(302.37, weight.finishedWeight(), .01);
  }

  /**
   * Of these, 0.200157 m² change over: 0.836127 × 80 = 66.89 g, (2 × 0.200157 + 0.182921) × 150 =
   * 87.485 g.
   */
  @Test
  void aMatchingDiscWeighsWhatItsFabricDoes() {
    Weight weight = weight(Briefs.inch().with("matching_disc_fabric", "base"));
    assertEquals(66.89, weight.frillWeight(), .005);
    assertEquals(87.485, weight.baseWeight(), .001);
  }

  @Test
  void aCushionWeighsTheSameInAnyOrder() {
    assertEquals(weight(Briefs.inch()), weight(Briefs.inch().with("quantity", 7)));
  }

  /**
   * By hand: two halves of 9 1/2 + 5/8 in are 20 1/4 in high together, so 20 1/4 ÷ 19 of a disc.
   */
  @Test
  void aZippedBackWeighsItsZipSeamsMore() {
    double base = 150 * Math.PI / 4 * 19.875 * 19.875 * 2.54 * 2.54 / 10_000;
    double whole = weight(Briefs.inch()).baseWeight() - base;
    double halves = weight(Briefs.inch().with("back_style", "zipped_halves")).baseWeight() - base;
    assertEquals(20.25 / 19, halves / whole, 1e-9);
  }

  /** Of base fabric too: each cushion has its own matching disc. */
  @Test
  void aCushionWeighsTheSameInAnyOrderOfBaseFabricToo() {
    Briefs ofBase = Briefs.inch().with("matching_disc_fabric", "base");
    Weight one = weight(ofBase);
    Weight seven = weight(ofBase.with("quantity", 7));
    assertEquals(one.baseWeight(), seven.baseWeight(), 1e-9);
  }
}
