package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.CushionSpec;
import frillbook.brief.RowStyle;
import org.junit.jupiter.api.Test;

class RowSizesTest {
  private static CushionSpec cushion(
      double diameter, double spacing, RowStyle style, double gap, double clearance) {
    return Briefs.inch()
        .with("diameter", diameter)
        .with("ring_spacing", spacing)
        .with("row_style", style.code())
        .with("centre_gap", gap)
        .with("edge_clearance", clearance)
        .brief()
        .cushion();
  }

  private static RowSizes sizes(RowStyle style, double gap) {
    return RowSizes.of(cushion(18, .75, style, gap, .5));
  }

  private static boolean rowsFit(CushionSpec cushion) {
    return RowSizes.of(cushion).leaveRoomFor(cushion);
  }

  /** By hand: 18 ÷ 2 − 0.5 = 8.5. */
  @Test
  void theOutermostRowKeepsClearOfTheEdge() {
    assertEquals(8.5, sizes(RowStyle.SPIRAL, .5).outerRadius());
  }

  @Test
  void rowsStartAtTheCentreGap() {
    assertEquals(.5, sizes(RowStyle.SPIRAL, .5).firstRadius());
    assertEquals(.5, sizes(RowStyle.RINGS, .5).firstRadius());
  }

  @Test
  void withoutAGapASpiralStartsAtTheCentreAndRingsOneSpacingOut() {
    assertEquals(0, sizes(RowStyle.SPIRAL, 0).firstRadius());
    assertEquals(.75, sizes(RowStyle.RINGS, 0).firstRadius());
  }

  /** By hand: 0.6 ÷ 2 = 0.3, which in binary is less than 0.1 + 0.2. */
  @Test
  void oneSpacingExactlyBetweenGapAndEdgeIsEnough() {
    assertTrue(rowsFit(cushion(.6, .1 + .2, RowStyle.SPIRAL, 0, 0)));
  }

  @Test
  void lessThanOneSpacingIsNot() {
    assertFalse(rowsFit(cushion(.6, .31, RowStyle.SPIRAL, 0, 0)));
    assertFalse(rowsFit(cushion(4, 1, RowStyle.RINGS, 1.5, .5)));
  }

  @Test
  void aGapWiderThanTheCushionLeavesNoRows() {
    assertFalse(rowsFit(cushion(4, 1, RowStyle.SPIRAL, 3, 0)));
  }
}
