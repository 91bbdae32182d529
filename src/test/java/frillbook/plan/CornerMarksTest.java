package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import org.junit.jupiter.api.Test;

/**
 * What a person marks on bias fabric with a matching disc, 19 7/8 in across, in its corners; by
 * hand.
 */
class CornerMarksTest {
  private static CutTotals total(int cushions) {
    Briefs bias = Briefs.inch().with(Grain.BIAS).with("quantity", cushions);
    return WorkedOrders.work(bias).total();
  }

  /** A line at 45° that touches a disc in the corner meets the edge at d(1 + 1/√2). */
  @Test
  void theFirstLineTouchesTheNearMatchingDisc() {
    assertEquals(19.875 * 1.7071067812, total(2).firstMark(), 1e-8);
    assertEquals(2.25 * 1.4142135624, total(2).markStep(), 1e-9);
  }

  /**
   * 90 in bought, 53 wide: 90 + 53 − 2 × 33.928747 = 75.142506 hold 23 steps of 3.181981 and leave
   * 1.956954, half of it along either edge.
   */
  @Test
  void theFarMatchingDiscIsMovedInUntilTheLastLineTouchesIt() {
    assertEquals(90, total(2).buyLength());
    assertEquals(.978477, total(2).discPush(), 5e-7);
  }

  @Test
  void aSingleMatchingDiscStaysInTheNearCorner() {
    assertEquals(19.875 * 1.7071067812, total(1).firstMark(), 1e-8);
    assertEquals(0, total(1).discPush());
  }
}
