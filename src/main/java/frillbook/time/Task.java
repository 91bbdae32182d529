package frillbook.time;

import frillbook.brief.TaskSpec;
import frillbook.brief.TimeSpec;
import java.util.List;

/**
 * One task, for the whole order.
 *
 * @param taskAmount of what drives it
 * @param taskRate minutes for one of that
 * @param taskWork amount × rate
 * @param taskSetup minutes spent once
 * @param taskMinutes work and setup; a task with nothing to do takes no setup. Gathering 17 m at
 *     3.5 with 10 to set up takes 69.5
 */
public record Task(
    TaskName taskName,
    double taskAmount,
    double taskRate,
    double taskWork,
    double taskSetup,
    double taskMinutes) {

  static Task of(TaskName name, double amount, TaskSpec spec) {
    double work = amount * spec.rate();
    double setup = amount > 0 ? spec.setup() : 0;
    return new Task(name, amount, spec.rate(), work, spec.setup(), work + setup);
  }

  /** Every task in working order. */
  static List<Task> all(TimeSpec times, Amounts amounts) {
    return List.of(
        of(TaskName.CUT_STRIPS, amounts.strips(), times.cutStrips()),
        of(TaskName.CUT_DISCS, amounts.discs(), times.cutDiscs()),
        of(TaskName.JOIN_STRIPS, amounts.joins(), times.joinStrips()),
        of(TaskName.FINISH_EDGE, amounts.edgeMetres(), times.finishEdge()),
        of(TaskName.GATHER, amounts.gatherMetres(), times.gather()),
        of(TaskName.MARK_RINGS, amounts.rings(), times.markRings()),
        of(TaskName.SEW_ROWS, amounts.rowMetres(), times.sewRows()),
        of(TaskName.MAKE_BACK, amounts.backPieces(), times.makeBack()),
        of(TaskName.CLOSE_EDGE, amounts.seamMetres(), times.closeEdge()),
        of(TaskName.FILL_CLOSE, amounts.cushions(), times.fillClose()),
        of(TaskName.FINISH_OFF, amounts.cushions(), times.finishOff()));
  }
}
