package frillbook.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows lie from the raw edge; of several one is past the sewn line. */
class GatheringRowsTest {
  private static Briefs inch(int rows, double inset) {
    return Briefs.inch().with("gathering_rows", rows).with("stitch_inset", inset);
  }

  private static GatheringRows rows(Briefs briefs) {
    return GatheringRows.of(briefs.brief());
  }

  /** Utah State University Extension, Straight Ruffle: two gathering rows 1/4 in apart. */
  @Test
  void twoRowsLieAQuarterOfAnInchApart() {
    GatheringRows two = rows(inch(2, .5));
    assertEquals(.25, two.gatherLastRow() - two.gatherFirstRow(), 1e-9);
  }

  /** By hand: the sewn line 1/2 in from the edge; 1/8 each way, and by 1/8 on towards the edge. */
  @ParameterizedTest
  @CsvSource({"1, .375, .375", "2, .375, .625", "3, .25, .625", "4, .125, .625"})
  void furtherRowsLieTowardsTheRawEdge(int count, double first, double last) {
    assertEquals(new GatheringRows(first, last), rows(inch(count, .5)));
  }

  /** Common practice: 3 mm; 6 mm inset put two rows 3 and 9 mm from the edge. */
  @Test
  void inCentimetresTheyLieThreeMillimetresFromTheLine() {
    GatheringRows two = rows(Briefs.inch().with("stitch_inset", .25).inMillimetres());
    assertEquals(.3, two.gatherFirstRow(), 1e-9);
    assertEquals(.9, two.gatherLastRow(), 1e-9);
  }

  /**
   * By hand: at 1/4 in two rows end 1/8 from the edge, three on it; at 3/8 three end 1/8 from it,
   * four on it; 3/16 leaves 1/16, just half of 1/8, and less is too little.
   */
  @ParameterizedTest
  @CsvSource({
    "1, .1875, true",
    "1, .18, false",
    "2, .25, true",
    "2, .1875, true",
    "2, .18, false",
    "3, .25, false",
    "3, .375, true",
    "4, .375, false",
    "4, .5, true"
  })
  void noRowMayLieAtTheRawEdge(int count, double inset, boolean fit) {
    Briefs briefs = inch(count, inset);
    assertEquals(fit, rows(briefs).fit(briefs.brief()));
  }
}
