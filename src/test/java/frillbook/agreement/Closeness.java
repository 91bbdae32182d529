package frillbook.agreement;

import frillbook.naming.NamedValues;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Judges whether the values of two engines are the same, and keeps count. */
final class Closeness {
  /** Numbers a and b agree when they differ by no more than this × max(1, |a|, |b|). */
  static final double TOLERANCE = 1e-9;

  /**
   * What little is left of a long run after most of it has been taken away carries the rounding of
   * the long run: it may be off by this × the largest number of the plan. Apache POI multiplies and
   * divides numbers of fifteen digits, one or two fewer than Java and most spreadsheets have.
   */
  static final double REMAINDER = 1e-13;

  /**
   * A number that a sentence says may be off by this × the largest number of the plan. That is less
   * than a coin of 0.01 up to ten billions; no program carries the coins of more through a plan.
   */
  static final double SAID = 1e-12;

  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

  private final double largestInPlan;
  private final double rounding;
  private long cells;
  private long remainders;
  private double largest;

  private Closeness(double largestInPlan) {
    this.largestInPlan = largestInPlan;
    this.rounding = REMAINDER * largestInPlan;
  }

  /** For the values of one plan. */
  static Closeness within(NamedValues plan) {
    return new Closeness(largestNumber(plan));
  }

  private static double largestNumber(NamedValues plan) {
    return Stream.concat(
            plan.lines().values().stream(), plan.columns().values().stream().flatMap(List::stream))
        .filter(Double.class::isInstance)
        .map(Double.class::cast)
        .mapToDouble(Math::abs)
        .max()
        .orElse(0);
  }

  /** Whether one engine's value of a cell is the other's. */
  boolean agree(Object one, Object other) {
    cells++;
    if (one instanceof Double a && other instanceof Double b) {
      return agree(a.doubleValue(), b.doubleValue());
    }
    return one.equals(other)
        || one instanceof String a && other instanceof String b && saysTheSame(a, b);
  }

  private boolean saysTheSame(String one, String other) {
    return NUMBER.matcher(one).replaceAll("#").equals(NUMBER.matcher(other).replaceAll("#"))
        && allClose(numbers(one), numbers(other));
  }

  private boolean allClose(List<Double> one, List<Double> other) {
    return IntStream.range(0, one.size())
        .allMatch(i -> Math.abs(one.get(i) - other.get(i)) <= SAID * largestInPlan);
  }

  private static List<Double> numbers(String said) {
    return NUMBER.matcher(said).results().map(n -> Double.valueOf(n.group())).toList();
  }

  private boolean agree(double one, double other) {
    double apart = Math.abs(one - other);
    double relative = apart / Math.max(1, Math.max(Math.abs(one), Math.abs(other)));
    if (relative <= TOLERANCE) {
      largest = Math.max(largest, relative);
      return true;
    }
    remainders += apart <= rounding ? 1 : 0;
    return apart <= rounding;
  }

  /** What came of judging the cells of so many briefs. */
  Findings findings(int briefs, List<Difference> differences) {
    return new Findings(briefs, cells, remainders, largest, List.copyOf(differences));
  }
}
