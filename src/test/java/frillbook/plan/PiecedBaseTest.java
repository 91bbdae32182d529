package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.thread.Seam;
import frillbook.time.Task;
import frillbook.time.TaskName;
import org.junit.jupiter.api.Test;

/**
 * A base of 19 7/8 in on 20 3/4 in of fabric, 19 3/4 between the selvedges, so that two widths are
 * sewn together to 38 1/2. By hand: base and back lie in zigzag, the one half of itself further
 * along than the other, 19 7/8 + 9 15/16 = 29 13/16 in, twice that with both widths, 59 5/8; by
 * eighths of a yard 63. Cut in two that is 31 1/2 in, the length of the seam, 0.8001 m.
 */
class PiecedBaseTest {
  private static final Briefs PIECED = Briefs.inch().with("base_fabric_width", 20.75);

  @Test
  void itsSeamIsAsLongAsHalfOfWhatIsBought() {
    Plan plan = Plan.of(PIECED.brief());
    assertEquals(2, plan.sizes().baseWidth().baseWidths());
    assertEquals(63, plan.base().base().baseBuyLength(), 1e-9);
    Seam seam = WorkedOrders.seam(WorkedOrders.work(PIECED), "widths");
    assertEquals(0.8001, seam.seamLength(), 1e-9);
  }

  /** By hand: 0.8001 × 2.5. */
  @Test
  void itTakesTheThreadOfASeam() {
    Seam seam = WorkedOrders.seam(WorkedOrders.work(PIECED), "widths");
    assertEquals(2.00025, seam.seamThread(), 1e-9);
  }

  /** By hand: 0.8001 × 3, as a metre of edge seam; the machine is set up for that one. */
  @Test
  void itTakesTheTimeOfAnEdgeSeam() {
    Briefs briefs = PIECED.with("close_edge_rate", 3).with("close_edge_setup", 7);
    Task task = WorkedOrders.task(WorkedOrders.work(briefs), "join_widths");
    assertEquals(0.8001, task.taskAmount(), 1e-9);
    assertEquals(2.4003, task.taskMinutes(), 1e-9);
  }

  @Test
  void aFabricThatIsWideEnoughHasNone() {
    ChosenGrain work = WorkedOrders.work(Briefs.inch());
    assertEquals(0, WorkedOrders.seam(work, "widths").seamLength());
    assertTrue(
        WorkedOrders.tasks(work).stream()
            .noneMatch(task -> task.taskName() == TaskName.JOIN_WIDTHS));
  }
}
