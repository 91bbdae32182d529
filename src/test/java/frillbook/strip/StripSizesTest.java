package frillbook.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
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

  /** By hand: 2 ÷ 3/4. */
  @Test
  void theCoverRatioIsHeightOverSpacing() {
    assertEquals(2.0 / .75, sizes(Briefs.inch()).coverRatio(), 1e-15);
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
