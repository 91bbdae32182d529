package frillbook.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

  /** By hand: 13.880 L × 25 g/L = 347.0 g; eleven are 3817 g, 7.634 bags of 500. */
  @Test
  void theOrderIsFilledFromBags() {
    Briefs briefs = cm(45).with("fill_medium", 25).with("quantity", 11);
    Filling filling = filling(briefs);
    assertEquals(347.0, filling.fillEach(), .05);
    assertEquals(3817, filling.fillWeight(), .5);
    assertEquals(7.634, filling.bought(briefs.brief()), 5e-4);
  }

  /** How full it looks settles its shape and not its weight. */
  @Test
  void fibreGoesByWhatTheCoverHoldsAtMost() {
    double half = filling(cm(45).with("fill_fraction", .5)).fillEach();
    assertEquals(filling(cm(45)).fillEach(), half, 1e-12);
  }

  /**
   * By hand: 18 in hold 1.2185242 × (9 × .254)³ = 14.557 L at most; at 18, 25 and 35 g/L, which lie
   * among or near the 18.6 to 40 of what is sold, 262, 364 and 509 g.
   */
  @ParameterizedTest
  @CsvSource({"soft, 262", "medium, 364", "firm, 509"})
  void softMediumAndFirmTakeMoreAndMore(String firmness, double grams) {
    Briefs briefs = Briefs.inch().with("fill_medium", 25).with("fill_firmness", firmness);
    assertEquals(grams, filling(briefs).fillEach(), .6);
  }

  /** By hand: 18 + 2 = 20 is a size; 18 + 3 = 21 is sold as 22. */
  @ParameterizedTest
  @CsvSource({"2,20", "3,22"})
  void aReadyPadIsASizeThatIsSold(double extra, double size) {
    assertEquals(size, filling(with("ready_pad").with("pad_extra", extra)).padSize());
  }

  /** By hand: a pad 20 in across holds 14.557 × (20/18)³ = 19.968 L, at 25 g/L 499 g. */
  @Test
  void aPadWeighsItsOwnFibre() {
    Filling pad = filling(with("ready_pad").with("fill_medium", 25));
    assertEquals(499, pad.fillEach(), .5);
  }

  /** By hand: 3 in thick, the cover goes up 1 1/2 on either side: 15 in, sold as 15 or as 16. */
  @ParameterizedTest
  @CsvSource({"1,15", "4,16"})
  void aFoamDiscIsADiameterThatIsSold(double step, double size) {
    Filling foam = filling(with("foam_disc").with("foam_thickness", 3).with("pad_step", step));
    assertEquals(size, foam.padSize(), 1e-12);
    assertEquals(15, foam.shape().filledDiameter(), 1e-12);
    assertEquals(3, foam.shape().filledThicknessLow());
    assertEquals(3, foam.shape().filledThicknessHigh());
  }

  /** By hand: a disc 16 × 2 in is π × 64 × 2 in³ = 402.12 in³ or 6.5896 L, at 30 g/L 197.7 g. */
  @Test
  void aFoamDiscWeighsWhatItsFoamDoes() {
    Briefs foam = with("foam_disc").with("foam_thickness", 2).with("foam_density", 30);
    assertEquals(197.7, filling(foam).fillEach(), .05);
  }

  /** Half of 18 in is all that a cover 18 in across can go round and lie on too. */
  @Test
  void foamCountsForHalfTheDiameterAtMost() {
    FilledShape foam = filling(with("foam_disc").with("foam_thickness", 12)).shape();
    assertEquals(9, foam.filledThicknessHigh());
    assertEquals(9, foam.filledDiameter());
  }

  /** A pad or a disc to each of three cushions; of fibre 3 × 157.2 g are .943 of a bag. */
  @ParameterizedTest
  @CsvSource({"ready_pad, 3", "foam_disc, 3", "loose_fibre, .943"})
  void asManyAreBoughtAsThereAreCushions(String sort, double bought) {
    Briefs three = with(sort).with("quantity", 3);
    assertEquals(bought, filling(three).bought(three.brief()), 5e-4);
  }

  private static Briefs with(String filling) {
    return Briefs.inch().with("filling", filling);
  }

  /**
   * US federal specification A-A-54095 (1990): a pillow of 20 × 26 in takes at least 24 oz of
   * polyester. A paper bag of that size holds 36.57 L (Robin 2004), so 18.6 g/L of what the cover
   * holds at most. A round cushion that holds as much, filled at that rate.
   */
  @Test
  void aCushionThatHoldsWhatAPillowHoldsTakesAPillowsFilling() {
    double radius = Math.cbrt(36.57 / 1.2185242) * 10;
    Briefs pillow = cm(2 * radius).with("fill_medium", 18.6);
    assertEquals(24, filling(pillow).fillEach() / GRAMS_PER_OUNCE, .05);
  }
}
