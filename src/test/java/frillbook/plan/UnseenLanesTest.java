package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
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
}
