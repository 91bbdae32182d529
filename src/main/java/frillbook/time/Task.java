package frillbook.time;

import frillbook.brief.Brief;
import frillbook.brief.TaskSpec;
import frillbook.brief.TimeSpec;
import frillbook.measure.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One task, for the whole order.
 *
 * @param taskAmount of what drives it
 * @param taskRate minutes for one of that
 * @param taskShown the amount as it is shown: yards beside inches, 1.0936 for a metre
 * @param taskShownRate minutes for one of these
 * @param taskWork amount × rate
 * @param taskSetup minutes spent once
 * @param taskMinutes work and setup. Gathering 34 m at 1.75 with 10 to set up takes 69.5
 */
public record Task(
    TaskName taskName,
    double taskAmount,
    double taskRate,
    double taskShown,
    double taskShownRate,
    double taskWork,
    double taskSetup,
    double taskMinutes) {

  /**
   * A line of the list of tasks.
   *
   * @param task empty where there is nothing to do
   */
  public record Row(Optional<Task> task) {
    private Row in(LengthUnit unit) {
      return new Row(task.map(some -> some.in(unit)));
    }
  }

  private Task in(LengthUnit unit) {
    double metres = taskName.isByLength() ? unit.metresPerLong() : 1;
    return new Task(
        taskName,
        taskAmount,
        taskRate,
        taskAmount / metres,
        taskRate * metres,
        taskWork,
        taskSetup,
        taskMinutes);
  }

  static Row row(TaskName name, double amount, TaskSpec spec) {
    double rate = spec.rate();
    double work = amount * rate;
    double minutes = work + spec.setup();
    Task task = new Task(name, amount, rate, amount, rate, work, spec.setup(), minutes);
    return new Row(Optional.of(task).filter(some -> amount > 0));
  }

  private static Row row(TaskName name, double amount, double rate) {
    return row(name, amount, new TaskSpec(rate, 0));
  }

  /** Every task in working order. */
  static List<Row> all(Brief brief, Amounts amounts) {
    TimeSpec times = brief.times();
    TimeSpec.Rates rates = times.rates();
    TaskSpec gather = times.gatherBy(brief.thread().gatherBy());
    return Stream.of(
            row(TaskName.TALK, 1, rates.talkRate()),
            row(TaskName.SAMPLE, 1, rates.sampleRate()),
            row(TaskName.CUT_STRIPS, amounts.strips(), times.cutStrips()),
            row(TaskName.JOIN_WIDTHS, amounts.widthMetres(), times.closeEdge().rate()),
            row(TaskName.CUT_DISCS, amounts.discs(), times.cutDiscs()),
            row(TaskName.FUSE, amounts.fused(), rates.fuseRate()),
            row(TaskName.JOIN_STRIPS, amounts.joins(), times.joinStrips()),
            row(TaskName.FINISH_EDGE, amounts.edgeMetres(), times.finishEdge()),
            row(TaskName.PRESS_STRIP, amounts.flatMetres(), rates.pressStripRate()),
            row(TaskName.GATHER, amounts.gatherMetres(), gather),
            row(TaskName.PULL_UP, amounts.pullUpMetres(), rates.pullUpRate()),
            row(TaskName.MARK_RINGS, amounts.rings(), times.markRings()),
            row(TaskName.TACK, amounts.rowMetres(), rates.tackRate()),
            row(TaskName.SEW_ROWS, amounts.rowMetres(), times.sewRows()),
            row(TaskName.TUCK_ENDS, amounts.ends(), rates.tuckEndsRate()),
            row(TaskName.FIT_ZIP, amounts.zips(), rates.fitZipRate()),
            row(TaskName.MAKE_BACK, amounts.backPieces(), times.makeBack()),
            row(TaskName.CLOSE_EDGE, amounts.seamMetres(), times.closeEdge()),
            row(TaskName.FILL_CLOSE, amounts.cushions(), times.fillClose()),
            row(TaskName.FINISH_OFF, amounts.cushions(), times.finishOff()),
            row(TaskName.PACK, amounts.cushions(), rates.packRate()))
        .map(row -> row.in(brief.unit()))
        .toList();
  }
}
