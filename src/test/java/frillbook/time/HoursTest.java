package frillbook.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.TaskSpec;
import frillbook.brief.TimeSpec;
import org.junit.jupiter.api.Test;

class HoursTest {
  private static final TimeSpec TIMES = Briefs.inch().brief().times();

  /** Common practice, no source: pulling up about 17 m by hand takes some 60 to 75 minutes. */
  @Test
  void gatheringSeventeenMetresTakesAnHourAndAQuarterAtMost() {
    double minutes = Task.of(TaskName.GATHER, 17, TIMES.gather()).taskMinutes();
    assertTrue(minutes >= 60 && minutes <= 75, () -> minutes + " min");
  }

  /** By hand: 1 × 4 + 30 = 34 for one, 10 × 4 + 30 = 70 for ten. */
  @Test
  void aBatchSetsUpOnce() {
    TaskSpec spec = new TaskSpec(4, 30);
    assertEquals(34, Task.of(TaskName.FILL_CLOSE, 1, spec).taskMinutes());
    assertEquals(70, Task.of(TaskName.FILL_CLOSE, 10, spec).taskMinutes());
  }

  @Test
  void aTaskWithNothingToDoIsNotSetUp() {
    assertEquals(0, Task.of(TaskName.JOIN_STRIPS, 0, new TaskSpec(4, 30)).taskMinutes());
  }

  /**
   * By hand, from the usual times: strips 10 × 1.5 + 10, discs 4 × 3 + 5, joins 9 × 3 + 5, gather
   * 10 × 3.5 + 10, rings 11 × 0.5 + 5, rows 5 × 4 + 10, back 1 × 5 + 5, edge seam 1.4 × 4 + 5, fill
   * 15 + 5, finish 10: 210.1 minutes.
   */
  @Test
  void tasksAddUpToHoursAndMinutes() {
    Hours hours = Hours.of(TIMES, new Amounts(10, 4, 9, 0, 10, 11, 5, 1, 1.4, 1));
    assertEquals(210.1 / 60, hours.hoursTotal(), 1e-9);
    assertEquals(210, hours.minutesTotal());
    assertEquals(3, hours.wholeHours());
    assertEquals(30, hours.leftMinutes());
  }
}
