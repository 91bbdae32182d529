package frillbook.time;

import frillbook.brief.Brief;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.Stream;

/**
 * How long the whole order takes.
 *
 * @param hoursTotal not rounded
 * @param minutesTotal to the nearest minute, half up
 * @param wholeHours of these
 * @param leftMinutes beyond them, 0 to 59
 */
public record Hours(
    List<Task.Row> tasks, double hoursTotal, int minutesTotal, int wholeHours, int leftMinutes) {

  /** Minutes that {@code names} take, setting up left out. */
  public double work(TaskName... names) {
    List<TaskName> counted = List.of(names);
    return done(tasks)
        .filter(task -> counted.contains(task.taskName()))
        .mapToDouble(Task::taskWork)
        .sum();
  }

  private static Stream<Task> done(List<Task.Row> tasks) {
    return tasks.stream().flatMap(row -> row.task().stream());
  }

  public static Hours of(Brief brief, Amounts amounts) {
    List<Task.Row> tasks = Task.all(brief, amounts);
    double sum = done(tasks).mapToDouble(Task::taskMinutes).sum();
    int minutes = Math.toIntExact(Math.round(Rounding.settle(sum)));
    return new Hours(tasks, sum / 60, minutes, minutes / 60, minutes % 60);
  }
}
