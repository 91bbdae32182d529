package frillbook.discs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.cutting.Fabric;
import org.junit.jupiter.api.Test;

/**
 * Worked by hand for cushions of 12 in, whose bases are 13 5/8 in and backs 13 in, on fabric of 44
 * in less two selvages of 1/2 in: three bases to a line, and 43 − 13 5/8 = 29 3/8 over 2 1/2
 * pitches is less than a base, so that zigzag is out of the question.
 */
class BaseFabricTest {
  private record Lines(
      int basesPerLine,
      int lines,
      int backsBeside,
      int backsPerLine,
      int backLines,
      double used,
      double bought) {}

  /** The lines of bases and backs in a grid. */
  private static Lines grid(Briefs briefs) {
    BaseFabric fabric = fabric(briefs);
    assertFalse(fabric.baseInZigzag());
    return new Lines(
        fabric.basePerRow(),
        fabric.discs().rows(),
        fabric.backs().beside(),
        fabric.backPerRow(),
        fabric.backs().rows(),
        fabric.baseUsedLength(),
        fabric.baseBuyLength());
  }

  private static BaseFabric fabric(Briefs briefs) {
    Brief brief = briefs.brief();
    return BaseFabric.of(
        brief, DiscSizes.of(brief), Fabric.of(brief.fabric(), brief.base().baseFabricWidth()));
  }

  private static Briefs twelve(int quantity) {
    return Briefs.inch().with("diameter", 12).with("quantity", quantity);
  }

  /** 3 × 13 5/8 = 40 7/8 leaves 2 1/8: three backs in their own row; 26 5/8 is 6 steps of 4 1/2. */
  @Test
  void threeBasesFillARowAndThreeBacksAnother() {
    assertEquals(new Lines(3, 1, 0, 3, 1, 26.625, 27), grid(twelve(3)));
  }

  /** 2 × 13 5/8 = 27 1/4 leaves 15 3/4: one back beside, the other in a row of its own. */
  @Test
  void aBackLiesBesideTheBasesWhereItFits() {
    assertEquals(new Lines(3, 1, 1, 3, 1, 26.625, 27), grid(twelve(2)));
  }

  /** One base leaves 29 3/8: both halves of 13 × 7 1/8 beside it; 13 5/8 is 4 steps. */
  @Test
  void bothHalvesLieBesideASingleBase() {
    Briefs zipped = twelve(1).with("back_style", "zipped_halves");
    assertEquals(new Lines(3, 1, 2, 3, 0, 13.625, 18), grid(zipped));
  }

  /**
   * 18 in: base 19 7/8, halves 19 × 9 3/4 with a zip seam of 1/4; 23 1/8 beside the base holds one
   * across, and 19 7/8 two behind each other. 19 7/8 is 5 steps.
   */
  @Test
  void lowPiecesLieBehindEachOtherBesideABase() {
    Briefs zipped = Briefs.inch().with("back_style", "zipped_halves").with("zip_seam", .25);
    assertEquals(new Lines(2, 1, 2, 2, 0, 19.875, 22.5), grid(zipped));
  }

  /** 4 cushions: a second row with one base, two backs beside it, two in their own row. */
  @Test
  void onlyTheLastRowOfBasesHasRoomBeside() {
    assertEquals(new Lines(3, 2, 2, 3, 1, 40.25, 40.5), grid(twelve(4)));
  }

  /** Three bases and three matching discs make two rows, three backs a third: 2 × 13 5/8 + 13. */
  @Test
  void matchingDiscsOfBaseFabricLieInRowsWithTheBases() {
    Briefs matching = twelve(3).with("matching_disc_fabric", "base");
    assertEquals(new Lines(3, 2, 0, 3, 1, 40.25, 40.5), grid(matching));
  }

  /**
   * A base of 13 5/8 and a back of 13 in on 13 in usable: two widths less 1 in are 25 in, one to a
   * line. In zigzag 25 − 13 5/8 = 11 3/8 in across and √(13.625² − 11.375²) = 7.50 in along: 21.125
   * in of either width, 42.25 in, 10 steps of 4 1/2 in.
   */
  @Test
  void twoWidthsSewnTogetherTakeTwiceTheLength() {
    BaseFabric pieced = fabric(twelve(1).with("base_fabric_width", 14));
    assertEquals(
        2 * (13.625 + Math.sqrt(13.625 * 13.625 - 11.375 * 11.375)), pieced.baseUsedLength(), 1e-9);
    assertEquals(45, pieced.baseBuyLength());
  }

  /** 26 5/8 ÷ 0.95 = 28.03 before washing, 7 steps. */
  @Test
  void fabricThatShrinksIsBoughtLonger() {
    assertEquals(31.5, fabric(twelve(3).with("wash_shrink_length", .05)).baseBuyLength());
  }

  /** 26 5/8 and 1/4 at the ends are 26 7/8, still 6 steps of 4 1/2; with 1/2 in it is 27 1/8, 7. */
  @Test
  void theEndsAreStraightenedOutOfWhatIsBought() {
    Briefs three = twelve(3);
    assertEquals(27, fabric(three.with("squaring_allowance", .25)).baseBuyLength());
    assertEquals(
        new Lines(3, 1, 0, 3, 1, 26.625, 31.5), grid(three.with("squaring_allowance", .5)));
  }
}
