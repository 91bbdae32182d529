package frillbook.template;

/**
 * The values a numeric input may take.
 *
 * @param preset the value it has until a person changes it, or {@link #BLANK}
 * @param from the smallest value allowed
 * @param to the largest value allowed
 */
public record Range(double preset, double from, double to) {
  /** The preset of a cell that is blank to begin with. */
  public static final double BLANK = Double.NaN;

  /** Whether {@code value} lies within the range, ends included; NaN does not. */
  public boolean holds(double value) {
    return value >= from && value <= to;
  }
}
