package frillbook.time;

import frillbook.brief.TaskSpec;
import frillbook.brief.TimeSpec;
import java.util.List;

/**
 * One task, for the whole order.
 *
 * @param taskAmount of what drives it
 * @param taskRate minutes for one of that
 * @param taskSetup minutes spent once
 * @param taskMinutes amount × rate + setup; a task with nothing to do takes no setup. Gathering 17
 *     m at 3.5 with 10 to set up takes 69.5
 */
public record Task(
    String taskName, double taskAmount, double taskRate, double taskSetup, double taskMinutes) {

  static Task of(String name, double amount, TaskSpec spec) {
    double setup = amount > 0 ? spec.setup() : 0;
    return new Task(name, amount, spec.rate(), spec.setup(), amount * spec.rate() + setup);
  }

  /** Every task in working order. */
  static List<Task> all(TimeSpec times, Amounts amounts) {
    return List.of(
        of("cut the strips", amounts.strips(), times.cutStrips()),
        of("cut discs and backs", amounts.discs(), times.cutDiscs()),
        of("join the strips", amounts.joins(), times.joinStrips()),
        of("finish the edge", amounts.edgeMetres(), times.finishEdge()),
        of("gather", amounts.gatherMetres(), times.gather()),
        of("mark the rings", amounts.rings(), times.markRings()),
        of("sew the rows", amounts.rowMetres(), times.sewRows()),
        of("make up the back", amounts.backPieces(), times.makeBack()),
        of("sew the edge seam", amounts.seamMetres(), times.closeEdge()),
        of("fill and close", amounts.cushions(), times.fillClose()),
        of("press, clip threads, inspect", amounts.cushions(), times.finishOff()));
  }
}
