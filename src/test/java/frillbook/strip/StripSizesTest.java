package frillbook.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import frillbook.Briefs;
import frillbook.brief.Grain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripSizesTest {
  private static StripSizes sizes(Briefs briefs) {
    return StripSizes.of(briefs.brief());
  }

  /** By hand: 2 high + 1/4 inset + hem of 1/2 or trim of 1/8; folded 2 × 2 1/4. */
  @ParameterizedTest
  @CsvSource({
    "raw,0,2.25",
    "pinked,0,2.25",
    "narrow_hem,0.5,2.75",
    "overlocked,0.125,2.375",
    "rolled,0.125,2.375",
    "folded,0,4.5"
  })
  void theEdgeSaysHowWideTheStripIsCut(String finish, double allowance, double width) {
    StripSizes sizes = sizes(Briefs.inch().with("edge_finish", finish));
    assertEquals(allowance, sizes.edgeAllowance());
    assertEquals(width, sizes.stripCutWidth());
  }

  /** By hand: 2.01 + 0.25 = 2.26, the next eighth is 2 3/8. */
  @Test
  void theCutWidthIsRoundedUpToTheMarkingStep() {
    assertEquals(2.375, sizes(Briefs.inch().with("frill_height", 2.01)).stripCutWidth());
  }

  /**
   * A mesh of the net is a rhombus; its sides keep their length. Where they meet at 2θ, its
   * diagonals are √2·cos θ and √2·sin θ of what they are in a square: 1.224745 and 0.707107 at 30°,
   * 1.083351 and 0.909039 at 40°.
   */
  @ParameterizedTest
  @CsvSource({"45", "40", "35", "30"})
  void aBiasStripNarrowsAsANetOfThreads(double degrees) {
    double longer = Math.sqrt(2) * Math.cos(Math.toRadians(degrees));
    double narrower = Math.sqrt(2) * Math.sin(Math.toRadians(degrees));
    assertEquals(narrower, StripSizes.narrowing(longer - 1), 1e-12);
  }

  /** As computed for a net of rods pinned where they cross. */
  @ParameterizedTest
  @CsvSource({"0,1", ".05,.947365", ".1,.888819", ".12,.863481"})
  void aStretchedStripIsAsWideAsIsKnownOfNets(double stretch, double width) {
    assertEquals(width, StripSizes.narrowing(stretch), 5e-7);
  }

  /**
   * By hand: 2 1/4 ÷ √(2 − 1.12²) = 2 1/4 ÷ 0.863481 = 2.605733, the next eighth is 2 5/8. It
   * stretches to 2.625 × 0.8634813 = 2.266638 wide. Straight strips stay 2 1/4.
   */
  @ParameterizedTest
  @CsvSource({"bias,2.625,2.266638", "crosswise,2.25,2.25", "lengthwise,2.25,2.25"})
  void biasStripsThatNarrowAreCutWider(String grain, double cut, double stretched) {
    StripSizes sizes = sizes(Briefs.inch().with("grain", grain).with("bias_stretch", .12));
    assertEquals(2.25, sizes.straightCutWidth());
    assertEquals(2.625, sizes.biasCutWidth());
    assertEquals(cut, sizes.stripCutWidth());
    assertEquals(stretched, sizes.stretchedWidth(), 5e-7);
    assertEquals(grain.equals("bias"), sizes.stripStretches());
    assertEquals(2.625, sizes.cutWidth(Grain.BIAS));
    assertEquals(2.25, sizes.cutWidth(Grain.CROSSWISE));
  }

  @Test
  void biasStripsThatDoNotStretchAreCutAsWideAsStraightOnes() {
    StripSizes sizes = sizes(Briefs.inch().with("grain", "bias"));
    assertEquals(2.25, sizes.stripCutWidth());
    assertEquals(2.25, sizes.stretchedWidth());
    assertFalse(sizes.stripStretches());
  }

  /** By hand: 2.5 layers of 0.4 mm are 1 mm thick, and 2 mm where the strip is folded. */
  @Test
  void gathersAreAsThickAsTheirLayers() {
    Briefs lawn = Briefs.inch().with("fabric_thickness", .4);
    assertEquals(1, sizes(lawn).bulk(), 1e-15);
    assertEquals(2, sizes(lawn.with("edge_finish", "folded")).bulk(), 1e-15);
  }

  /**
   * Per edge 3/8 + 1/4 = 5/8 in (Oklahoma Cooperative Extension, 4-H card 810) and 3/8 + 3/8 = 3/4
   * in (Utah State University Extension); two edges meet in a seam.
   */
  @ParameterizedTest
  @CsvSource({"0.375,0.25,0.625", "0.375,0.375,0.75"})
  void aFrenchSeamTakesBothAllowancesOfBothEdges(double first, double second, double perEdge) {
    StripSizes sizes =
        sizes(
            Briefs.inch()
                .with("join_finish", "french")
                .with("join_allowance", first)
                .with("join_second_allowance", second));
    assertEquals(2 * perEdge, sizes.seamLoss());
  }

  /** By hand: two edges of 1/4; the second allowance is for French seams alone. */
  @ParameterizedTest
  @CsvSource({"plain", "overlocked"})
  void aSingleSeamTakesOneAllowanceOfBothEdges(String finish) {
    assertEquals(.5, sizes(Briefs.inch().with("join_finish", finish)).seamLoss());
  }
}
