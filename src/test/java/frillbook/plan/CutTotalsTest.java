package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where discs lie on the frill fabric, and whether it is lean. */
class CutTotalsTest {
  private static CutTotals totals(Briefs briefs) {
    return WorkedOrders.work(briefs).total();
  }

  /** By hand in steps of 4 1/2 in: three steps more than the area takes, or two, or 2/5 more. */
  @ParameterizedTest
  @CsvSource({
    "cushion, 3, 1.5, 13.5, false",
    "cushion, 3, 1.5, 9, true",
    "cushion, 3, 1.5, 9.0000001, true",
    "cushion, 3, 1.4, 90, true",
    "cushion, 3, 1.4000001, 90, true",
    "cushion, 3, 1.41, 90, false",
    "cushion, 1, 1.5, 13.5, true",
    "order, 3, 1.5, 13.5, true"
  })
  void stripsOfEveryCushionMayTakeTwoStepsOrTwoFifthsMore(
      String joinedBy, int quantity, double ratio, double over, boolean lean) {
    CutTotals totals =
        Filled.of(
            CutTotals.class,
            Map.of("fabricRatio", ratio, "buyLength", 100 + over, "fabricLowerBound", 100.0));
    Briefs briefs = Briefs.inch().with("joined_by", joinedBy).with("quantity", quantity);
    assertEquals(lean, totals.isLean(briefs.brief()));
  }

  /**
   * By hand: narrow strips on wide fabric, and discs of 15 5/8 in, which reach 15 5/8 × (1 + 1/√2)
   * = 26.673543 into their corners. The first cut line lies at 86.573593 and the last at 86.647186,
   * so the discs are pushed along both edges by half of what lies between. The other 26 lie eight
   * side by side in four bands, 62 1/2 in of the 234.
   */
  @Test
  void discsInCornersTouchTheFirstLineAndTheLast() {
    CutTotals totals =
        totals(
            Briefs.inch()
                .with(Grain.BIAS)
                .with("frill_height", 1)
                .with("fabric_width", 130)
                .with("diameter", 14)
                .with("quantity", 28));
    assertEquals(86.573593, totals.firstMark(), 5e-7);
    assertEquals(86.647186, totals.lastMark(), 5e-7);
    assertEquals((86.573593 - 26.673543) / 2, totals.nearDiscPush(), 1e-6);
    assertEquals((86.647186 - 26.673543) / 2, totals.discPush(), 1e-6);
    assertEquals(234 - 62.5, totals.matchingDiscStart(), 1e-9);
  }

  /** By hand: two bands of 44 cm at the end of 270 ({@link WorkedOrders#washedBias}), no corner. */
  @Test
  void discsInBandsBeginWhereTheStripsEnd() {
    CutTotals totals = totals(WorkedOrders.washedBias());
    assertEquals(182, totals.matchingDiscStart(), 1e-9);
    assertEquals(0, totals.nearDiscPush());
    assertEquals(0, totals.discPush());
  }

  /** The one disc lies in the near corner: none begins behind the strips, nor in the far corner. */
  @Test
  void aDiscInACornerBeginsNoBand() {
    CutTotals totals = totals(Briefs.inch().with(Grain.BIAS));
    assertEquals(0, totals.matchingDiscStart());
    assertEquals(0, totals.discPush());
  }

  /** By hand: nine strips of 2 1/4 in lie before the disc; without discs nothing begins. */
  @Test
  void onStraightGrainDiscsBeginBehindTheStrips() {
    assertEquals(20.25, totals(Briefs.inch()).matchingDiscStart(), 1e-9);
    assertEquals(0, totals(Briefs.inch().with("matching_discs", 0)).matchingDiscStart());
  }

  @Test
  void twoDiscsLieInZigzagWhereTheyAreTooLongForALine() {
    Briefs two = Briefs.inch().with(Grain.LENGTHWISE).with("matching_discs", 2);
    CutTotals small = totals(two.with("diameter", 8));
    assertTrue(small.discsZigzag());
    assertFalse(small.discsApart());
    assertFalse(totals(two.with("diameter", 14)).discsZigzag());
  }

  /** Five strips of 2 1/4 in, and a disc at either end of those beside them. */
  @Test
  void twoDiscsLieApartOnWideFabric() {
    CutTotals totals =
        totals(Briefs.inch().with("fabric_width", 108).with("diameter", 14).with("quantity", 2));
    assertTrue(totals.discsApart());
    assertFalse(totals.discsZigzag());
    assertEquals(11.25, totals.matchingDiscStart(), 1e-9);
    assertFalse(totals(Briefs.inch()).discsApart());
  }

  @Test
  void whereNoFullStripIsCutTheFirstIsShorter() {
    CutTotals none = totals(Briefs.inch().with(Grain.BIAS).with("quantity", 2));
    assertEquals(0, none.fullCount());
    assertTrue(none.firstStripLength() < none.stripLength());
    CutTotals some = totals(Briefs.inch());
    assertEquals(some.stripLength(), some.firstStripLength());
  }
}
