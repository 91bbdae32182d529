package frillbook.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.TaskSpec;
import frillbook.reading.PackagedTemplates;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoursTest {
  private static final Amounts AMOUNTS =
      new Amounts(10, 0, 4, 2, 9, 0, 5, 10, 5, 11, 6, 2, 3, 1, 1.4, 1);

  private static double minutes(Briefs briefs, TaskName name, Amounts amounts) {
    return Hours.of(briefs.brief(), amounts).tasks().stream()
        .flatMap(row -> row.task().stream())
        .filter(task -> task.taskName() == name)
        .mapToDouble(Task::taskMinutes)
        .sum();
  }

  private static Amounts gathering(double rowMetres) {
    return new Amounts(1, 0, 1, 0, 0, 0, 17, rowMetres, 17, 1, 1, 2, 0, 1, 1, 1);
  }

  /** What a new workbook says, in a brief that says something else. */
  private static Briefs preset(Briefs briefs, String name) {
    return briefs.with(
        name,
        PackagedTemplates.template().inputs().stream()
            .filter(input -> input.name().equals(name))
            .findFirst()
            .orElseThrow()
            .preset(briefs.unit()));
  }

  /**
   * Common practice, no source: to gather about 17 m by hand takes some 60 to 75 minutes, 3 1/2 a
   * metre. Two rows are 34 m.
   */
  @Test
  void gatheringSeventeenMetresByHandTakesAnHourAndAQuarterAtMost() {
    Briefs hand = preset(Briefs.inch().with("gather_by", "hand"), "gather_hand_rate");
    double minutes = minutes(hand, TaskName.GATHER, gathering(34));
    assertTrue(minutes >= 60 && minutes <= 75, () -> minutes + " min");
  }

  /** Common practice, no source: by machine 0.4 to 0.7 min a metre of row, 10 to set up. */
  @Test
  void sewingTwoRowsOfSeventeenMetresByMachineTakesHalfAsLong() {
    Briefs machine = preset(Briefs.inch(), "gather_rate");
    double minutes = minutes(machine, TaskName.GATHER, gathering(34));
    assertTrue(minutes >= 34 * .4 + 10 && minutes <= 34 * .7 + 10, () -> minutes + " min");
  }

  /** By hand: each row is 17 m; at half a minute, and 10 to set up, 18.5, 27 and 44. */
  @ParameterizedTest
  @CsvSource({"17, 18.5", "34, 27", "68, 44"})
  void everyGatheringRowTakesItsOwnTime(double metres, double minutes) {
    Briefs briefs = Briefs.inch().with("gather_rate", .5);
    assertEquals(minutes, minutes(briefs, TaskName.GATHER, gathering(metres)), 1e-9);
  }

  /** By hand: 1 × 4 + 30 = 34 for one, 10 × 4 + 30 = 70 for ten. */
  @Test
  void aBatchSetsUpOnce() {
    TaskSpec spec = new TaskSpec(4, 30);
    assertEquals(34, Task.row(TaskName.FILL_CLOSE, 1, spec).task().orElseThrow().taskMinutes());
    assertEquals(70, Task.row(TaskName.FILL_CLOSE, 10, spec).task().orElseThrow().taskMinutes());
  }

  @Test
  void aTaskWithNothingToDoIsNotListed() {
    TaskSpec spec = new TaskSpec(4, 30);
    assertEquals(Optional.empty(), Task.row(TaskName.JOIN_STRIPS, 0, spec).task());
  }

  /**
   * By hand, from the times of the brief: strips 10 × 1.5 + 10, discs 4 × 3 + 5, joins 9 × 3 + 5,
   * gathering rows 10 × 1.75 + 10, rings 11 × 0.5 + 5, rows 6 × 4 + 10, back 1 × 5 + 5, edge seam
   * 1.4 × 4 + 5, fill 15 + 5, finish 10: 196.6 minutes. No others have a rate.
   */
  @Test
  void tasksAddUpToHoursAndMinutes() {
    Hours hours = Hours.of(Briefs.inch().brief(), AMOUNTS);
    assertEquals(196.6 / 60, hours.hoursTotal(), 1e-9);
    assertEquals(197, hours.minutesTotal());
    assertEquals(3, hours.wholeHours());
    assertEquals(17, hours.leftMinutes());
  }

  /**
   * By hand, at 7 minutes each: talk and sample once, 2 pieces of interfacing, 5 m of strip pressed
   * and pulled up, 6 m tacked, 2 ends, 3 zips, 1 cushion packed.
   */
  @ParameterizedTest
  @CsvSource({
    "talk, 7",
    "sample, 7",
    "fuse, 14",
    "press_strip, 35",
    "pull_up, 35",
    "tack, 42",
    "tuck_ends, 14",
    "fit_zip, 21",
    "pack, 7"
  })
  void whatIsEasilyForgottenTakesItsMinutes(String task, double minutes) {
    Briefs briefs = Briefs.inch().with(task + "_rate", 7);
    double without = Hours.of(Briefs.inch().brief(), AMOUNTS).hoursTotal();
    double with = Hours.of(briefs.brief(), AMOUNTS).hoursTotal();
    assertEquals(minutes, (with - without) * 60, 1e-9);
  }

  private static Task task(TaskName name, Briefs briefs) {
    return Hours.of(briefs.brief(), AMOUNTS).tasks().stream()
        .flatMap(row -> row.task().stream())
        .filter(task -> task.taskName() == name)
        .findFirst()
        .orElseThrow();
  }

  /** By hand: 6 m are 6.561680 yd, and 4 minutes for a metre 3.6576 for a yard. */
  @Test
  void besideInchesWhatIsMeasuredIsShownInYards() {
    Task rows = task(TaskName.SEW_ROWS, Briefs.inch());
    assertEquals(6.561680, rows.taskShown(), 5e-7);
    assertEquals(3.6576, rows.taskShownRate(), 1e-12);
    assertEquals(24, rows.taskShown() * rows.taskShownRate(), 1e-9);
    Task metric = task(TaskName.SEW_ROWS, Briefs.inch().inMillimetres());
    assertEquals(6, metric.taskShown());
    assertEquals(4, metric.taskShownRate());
  }

  @Test
  void piecesAreShownAsTheyAreCounted() {
    Task strips = task(TaskName.CUT_STRIPS, Briefs.inch());
    assertEquals(10, strips.taskShown());
    assertEquals(1.5, strips.taskShownRate());
  }

  /** By hand: strips 10 × 1.5, discs 4 × 3; setting up is not counted, fusing has no rate. */
  @Test
  void theWorkOfSomeTasksIsAddedUp() {
    Hours hours = Hours.of(Briefs.inch().brief(), AMOUNTS);
    assertEquals(27, hours.work(TaskName.CUT_STRIPS, TaskName.CUT_DISCS, TaskName.FUSE), 1e-9);
    assertEquals(0, hours.work());
  }
}
