package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.CushionSpec;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rings 3/4 in apart from a gap of 1/2 in on, a frill 2 in high. */
class CoverTest {
  private static Briefs briefs(String style, double diameter, double fullness) {
    return Briefs.inch()
        .with("row_style", style)
        .with("diameter", diameter)
        .with("fullness", fullness);
  }

  private static Cover cover(Briefs briefs) {
    return Cover.of(briefs.brief(), RowSizes.of(briefs.brief().cushion()));
  }

  /**
   * By hand: the second turn ends at 2 in, the second circle lies at 1 1/4 in. A circle of 2 + x in
   * goes round 2π(2 + x), and 1.6 × 2π × 2 is that of 3.2 in: 1.2 in further out. In a cushion of 5
   * in the second turn ends at 2 in, the outer radius; in one of 4 1/2 in already at 1 3/4.
   */
  @ParameterizedTest
  @CsvSource({
    "spiral,18,1,0",
    "spiral,18,1.6,1.2",
    "spiral,18,2,2",
    "spiral,18,3,2",
    "spiral,4.5,1.6,1.05",
    "rings,18,1.6,0.75",
    "rings,18,2,1.25"
  })
  void theFrillReachesAsFarAsItsLengthAllows(
      String style, double diameter, double fullness, double reach) {
    assertEquals(reach, cover(briefs(style, diameter, fullness)).coverReach(), 1e-12);
  }

  /** By hand: 3 1/2 in leave 1 1/4 in, one turn, or circles at 1/2 and 1 1/4 in. */
  @ParameterizedTest
  @CsvSource({
    "spiral,3.5,1,true",
    "spiral,3.75,1,false",
    "rings,3.5,1,false",
    "rings,3.4,1,true",
    "rings,18,1.59,false",
    "rings,18,1.6,true"
  })
  void whatLiesInsideTheSecondRingDoesNotCount(
      String style, double diameter, double fullness, boolean covers) {
    Briefs briefs = briefs(style, diameter, fullness);
    CushionSpec cushion = briefs.brief().cushion();
    assertEquals(covers, cover(briefs).covers(cushion, RowSizes.of(cushion)));
  }
}
