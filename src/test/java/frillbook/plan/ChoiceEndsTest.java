package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ends that a choice with other rings has more or fewer to tuck in. */
class ChoiceEndsTest {
  /**
   * Two cushions of 18 in, the outermost ring at 8.5 in: circles 3/4 in apart are at 0.75, 1.5 …
   * 8.25 in, 11 of them, circles 1 1/2 in apart at 1.5, 3, 4.5, 6 and 7.5 in, 5 of them.
   */
  private static final Briefs TWO =
      Briefs.inch()
          .with("quantity", 2)
          .with("diameter", 18)
          .with("edge_clearance", .5)
          .with("centre_gap", 0)
          .with("ring_spacing", .75)
          .with("choice_three_spacing", 1.5);

  /** What minutes for an end add to the hours by which the third choice differs from the plan. */
  private static double added(Briefs briefs, double minutes) {
    return more(briefs.with("tuck_ends_rate", minutes)) - more(briefs.with("tuck_ends_rate", 0));
  }

  private static double more(Briefs briefs) {
    List<ChoiceRow> rows = WorkedOrders.work(briefs).costing().choices();
    return hours(rows.get(2)) - hours(rows.get(0));
  }

  private static double hours(ChoiceRow row) {
    return row.figures().orElseThrow().choiceHours();
  }

  /** 6 rings fewer have 12 ends fewer, in two cushions 24; at 2 minutes each 48 minutes. */
  @Test
  void separateRingsThatAreFewerHaveFewerEndsToTuckIn() {
    assertEquals(-.8, added(TWO.with("row_style", "rings"), 2), 1e-9);
  }

  @Test
  void aSpiralHasTwoEndsWhateverItsTurns() {
    assertEquals(0, added(TWO.with("row_style", "spiral"), 2), 1e-9);
  }
}
