package frillbook.time;

import frillbook.brief.TimeSpec;
import frillbook.measure.Rounding;
import java.util.List;

/**
 * How long the whole order takes.
 *
 * @param hoursTotal not rounded
 * @param minutesTotal to the nearest minute, half up
 * @param wholeHours of these
 * @param leftMinutes beyond them, 0 to 59
 */
public record Hours(
    List<Task> tasks, double hoursTotal, int minutesTotal, int wholeHours, int leftMinutes) {

  /** Minutes that {@code names} take, setting up left out. */
  public double work(TaskName... names) {
    List<TaskName> counted = List.of(names);
    return tasks.stream()
        .filter(task -> counted.contains(task.taskName()))
        .mapToDouble(Task::taskWork)
        .sum();
  }

  public static Hours of(TimeSpec times, Amounts amounts) {
    List<Task> tasks = Task.all(times, amounts);
    double sum = tasks.stream().mapToDouble(Task::taskMinutes).sum();
    int minutes = Math.toIntExact(Math.round(Rounding.settle(sum)));
    return new Hours(tasks, sum / 60, minutes, minutes / 60, minutes % 60);
  }
}
