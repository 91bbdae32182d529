package frillbook.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FillingTest {
  private static final double GRAMS_PER_OUNCE = 28.349523125;

  private static Filling filling(Briefs briefs) {
    return Filling.of(briefs.brief());
  }

  private static Briefs cm(double diameter) {
    Briefs inch = Briefs.inch().with("diameter", diameter);
    return new Briefs(LengthUnit.CM, inch.inputs());
  }

  /** Computed from the Mylar balloon's constants, as published. */
  @Test
  void aFlat45CmDiscFillsTo34CmAnd14Litres() {
    Filling full = filling(cm(45).with("fill_fraction", 1));
    assertEquals(34.324, full.shape().filledDiameter(), 5e-4);
    assertEquals(20.563, full.shape().filledThicknessHigh(), 5e-4);
    assertEquals(13.880, full.limitVolume(), 5e-4);
  }

  /** 1 in = 2.54 cm exactly. */
  @Test
  void anInchBriefHoldsTheSameLitres() {
    assertEquals(13.880, filling(Briefs.inch().with("diameter", 45 / 2.54)).limitVolume(), 5e-4);
  }

  /** By hand: 13.880 L × 0.6 × 18 g/L = 149.9 g; eleven are 1649 g, four bags of 500. */
  @Test
  void theOrderIsFilledFromWholeBags() {
    Filling filling = filling(cm(45).with("quantity", 11));
    assertEquals(149.9, filling.fillEach(), .05);
    assertEquals(1649, filling.fillWeight(), .5);
    assertEquals(4, filling.fillBags());
  }

  /** By hand: 18 + 2 = 20 is a size; 18 + 3 = 21 is sold as 22. */
  @ParameterizedTest
  @CsvSource({"2,20", "3,22"})
  void aReadyPadIsASizeThatIsSold(double extra, double size) {
    assertEquals(size, filling(Briefs.inch().with("pad_extra", extra)).padSize());
  }

  /**
   * US federal specification A-A-54095 (1990): a pillow of 20 × 26 in takes at least 24 oz of
   * polyester. Model: a round cushion of the same flat area, as a pillow has about the same shape.
   * Band: a factor of two either way, since the specification's density and loft are not known.
   */
  @Test
  void aPillowSizedCushionTakesAboutAPillowsFilling() {
    double diameter = Math.sqrt(20 * 26 * 4 / Math.PI);
    double ounces = filling(Briefs.inch().with("diameter", diameter)).fillEach() / GRAMS_PER_OUNCE;
    assertTrue(ounces > 12 && ounces < 48, () -> ounces + " oz");
  }
}
