package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import org.junit.jupiter.api.Test;

/**
 * What a person marks on bias fabric with a matching disc, 19 7/8 in across, in its corners; by
 * hand. Two would lie in a line, were the strips not 9 1/4 in wide: their lines are 13.08 apart,
 * more than 19.875 × (2 − √2) = 11.64.
 */
class CornerMarksTest {
  private static CutTotals total(int matchingDiscs) {
    Briefs bias = Briefs.inch().with(Grain.BIAS).with("matching_discs", matchingDiscs);
    return WorkedOrders.work(matchingDiscs == 1 ? bias : bias.with("frill_height", 9)).total();
  }

  /** A line at 45° that touches a disc in the corner meets the edge at d(1 + 1/√2). */
  @Test
  void theFirstLineTouchesTheNearMatchingDisc() {
    assertEquals(19.875 * 1.7071067812, total(2).firstMark(), 1e-8);
    assertEquals(9.25 * 1.4142135624, total(2).markStep(), 1e-8);
    assertEquals(0, total(2).lineMatchingDiscs());
  }

  /**
   * 162 in bought, 53 wide: 162 + 53 − 2 × 33.928747 = 147.142505 hold 11 steps of 13.081475 and
   * leave 3.246275, half of it along either edge.
   */
  @Test
  void theFarMatchingDiscIsMovedInUntilTheLastLineTouchesIt() {
    assertEquals(162, total(2).buyLength());
    assertEquals(1.623138, total(2).discPush(), 5e-7);
  }

  @Test
  void aSingleMatchingDiscStaysInTheNearCorner() {
    assertEquals(19.875 * 1.7071067812, total(1).firstMark(), 1e-8);
    assertEquals(0, total(1).discPush());
  }
}
