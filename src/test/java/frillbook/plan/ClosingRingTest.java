package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.naming.NamedValues;
import org.junit.jupiter.api.Test;

/**
 * A spiral of 10 2/3 turns, 301.7616 in long (computed from the exact spiral), and a circle of 8
 * 1/2 in round it, 53.4071: 355.1687 in, 9.021286 m.
 */
class ClosingRingTest {
  private static final NamedValues PLAN =
      NamedValues.of(Plan.of(Briefs.inch().with("closing_ring", "yes").brief()));

  private static Object in(String column, String keys, String row) {
    return PLAN.columns().get(column).get(PLAN.columns().get(keys).indexOf(row));
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  /** By hand: 355.1687 × 2.5 + 1. */
  @Test
  void theStripIsLongEnoughForIt() {
    assertEquals(888.9218, number(PLAN.lines().get("flat_length")), 5e-4);
  }

  @Test
  void itIsMarkedAndSewn() {
    assertEquals(12, number(in("task_amount", "task_name", "mark_rings")));
    assertEquals(9.021286, number(in("task_amount", "task_name", "sew_rows")), 5e-6);
  }

  @Test
  void itTakesThread() {
    assertEquals(9.021286, number(in("seam_length", "seam_name", "rows")), 5e-6);
  }

  /** By hand, choice two 1 1/2 apart: 8 ÷ 1.5 = 5.33, six turns begun, and the closing ring. */
  @Test
  void aChoiceHasItToo() {
    Briefs wide = Briefs.inch().with("closing_ring", "yes").with("choice_two_spacing", 1.5);
    assertEquals(7.0, NamedValues.of(Plan.of(wide.brief())).lines().get("two_rings"));
  }
}
