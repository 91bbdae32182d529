package frillbook.discs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiscSizesTest {
  private static final Briefs TWELVE = Briefs.inch().with("diameter", 12);

  private static DiscSizes sizes(Briefs briefs) {
    return DiscSizes.of(briefs.brief());
  }

  /** By hand: 13 ÷ 0.96 = 13.542, the next eighth is 13 5/8; sewn, 12 + 2 × 1/2 are left. */
  @Test
  void theBaseIsCutWiderByWhatTheRowsDrawIn() {
    assertEquals(13.625, sizes(TWELVE).baseCutDiameter());
    assertEquals(13, sizes(TWELVE).trimmedDiameter());
    assertEquals(13, sizes(TWELVE.with("draw_in", 0)).baseCutDiameter());
  }

  /** By hand: 13 whole; 13/2 + 5/8 = 7 1/8 with a zip; 13/2 + 4/2 + 1 = 9 1/2 overlapping. */
  @ParameterizedTest
  @CsvSource({"one_disc,3,13", "zipped_halves,6,7.125", "overlapping,6,9.5"})
  void theBackStyleSaysHowManyPiecesAndHowHigh(String style, int pieces, double height) {
    DiscSizes sizes = sizes(TWELVE.with("back_style", style).with("quantity", 3));
    assertEquals(pieces, sizes.backPieceCount());
    assertEquals(height, sizes.backPieceHeight());
    assertEquals(13, sizes.backCutDiameter());
  }

  /** By hand: two on each base and one on each back make three, times four cushions. */
  @Test
  void everyCushionHasItsMatchingDiscs() {
    Briefs four =
        TWELVE.with("quantity", 4).with("matching_discs", 2).with("back_matching_discs", 1);
    assertEquals(12, sizes(four).matchingDiscCount());
    assertEquals(0, sizes(four).baseMatchingCount());
    Briefs ofBaseFabric = four.with("matching_disc_fabric", "base");
    assertEquals(0, sizes(ofBaseFabric).matchingDiscCount());
    assertEquals(12, sizes(ofBaseFabric).baseMatchingCount());
  }

  /**
   * By hand, 1/2 in seams, steps of 2 in: 18 - 1 = 17, so 16; 17 - 1 = 16 exactly; 2 1/2 - 1 = 1
   * 1/2, for which none is sold; and a back in one disc has none.
   */
  @ParameterizedTest
  @CsvSource({"18,zipped_halves,16", "17,zipped_halves,16", "2.5,zipped_halves,0", "18,one_disc,0"})
  void aZipEndsShortOfTheEdgeSeam(double diameter, String style, double length) {
    Briefs back = Briefs.inch().with("diameter", diameter).with("back_style", style);
    assertEquals(length, sizes(back).zipLength());
  }

  /**
   * By hand: a base of 13 5/8 in; 14 1/2 in of frill fabric less two selvedges of 1/2 in are 13 1/2
   * in, 14 5/8 in are enough.
   */
  @Test
  void matchingDiscsTooWideForTheFrillFabricAreOfBaseFabric() {
    DiscSizes narrow = sizes(TWELVE.with("quantity", 4).with("fabric_width", 14.5));
    assertEquals(0, narrow.matchingDiscCount());
    assertEquals(4, narrow.baseMatchingCount());
    DiscSizes wide = sizes(TWELVE.with("quantity", 4).with("fabric_width", 14.625));
    assertEquals(4, wide.matchingDiscCount());
    assertEquals(0, wide.baseMatchingCount());
  }

  /** By hand: 6 1/2 + 0.6 = 7.1, the next eighth is 7 1/8. */
  @Test
  void backPiecesAreRoundedUpToTheMarkingStep() {
    Briefs zipped = TWELVE.with("back_style", "zipped_halves").with("zip_seam", .6);
    assertEquals(7.125, sizes(zipped).backPieceHeight());
  }

  /** By hand: 13 5/8 ÷ 2, and a quarter of its square by π. */
  @Test
  void aDiscHasItsRadiusAndItsArea() {
    assertEquals(6.8125, sizes(TWELVE).discRadius());
    assertEquals(145.8018, sizes(TWELVE).discArea(), 5e-5);
  }

  /**
   * By hand: a disc of 13 is 132.7323; two halves of 7 1/8 are together 14 1/4 high, 14.25 ÷ 13 of
   * that; two of 9 1/2 are 19 ÷ 13.
   */
  @ParameterizedTest
  @CsvSource({"one_disc,132.7323", "zipped_halves,145.4950", "overlapping,193.9933"})
  void aBackInTwoIsAsMuchLargerAsItIsHigher(String style, double area) {
    assertEquals(area, sizes(TWELVE.with("back_style", style)).backArea(), 5e-5);
  }
}
