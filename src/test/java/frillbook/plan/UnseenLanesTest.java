package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Strips 1 in wide across 59 in of fabric, past one matching disc: that of 45 in is (45 + 1) ÷ 0.96
 * = 47.92, marked as 48, that of 29 in 31.25. By hand: 48 lanes lie beside the one disc and 32 at
 * most beside the other, and in 32 shorter strips are sought.
 */
class UnseenLanesTest {
  private static final Briefs NARROW =
      Briefs.inch()
          .with("fabric_width", 60)
          .with("base_fabric_width", 60)
          .with("frill_height", .75)
          .with("stitch_inset", .25)
          .with("matching_discs", 1);

  @ParameterizedTest
  @CsvSource({"45, 16", "29, 0"})
  void lanesPastTheThirtySecondAreCountedAlone(double diameter, int unseen) {
    ChosenGrain work = WorkedOrders.work(NARROW.with("diameter", diameter));
    assertEquals(unseen, work.total().lanesUnseen());
  }

  /**
   * By hand: 15 strips of 53 in by 2 1/4 in, as in package layout works out, and a disc of 19 7/8
   * in take more than a yard. Two leave 72 − 19 7/8 = 52 1/8 in before the disc, 23 lanes that end
   * at 51 3/4 in: 8 of them are not cut.
   */
  @Test
  void lanesThatStayUncutBeforeTheMatchingDiscsAreTold() {
    CutTotals total = WorkedOrders.work(Briefs.inch().with("buy_step", 36)).total();
    assertEquals(15, total.fullCount());
    assertEquals(8, total.lanesUncut());
    assertEquals(51.75, total.matchingDiscStart(), 1e-9);
    assertEquals(0, WorkedOrders.work(WorkedOrders.ringsAcross()).total().lanesUncut());
  }
}
