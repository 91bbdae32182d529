package frillbook.measure;

/**
 * The outline of base, back and discs: a circle. Whoever needs its length or area asks here, so
 * that a cushion of another outline changes one place. 0 across is 0 around and has no area.
 */
public final class Outline {
  private Outline() {}

  /** The length of the outline, in the unit of {@code across}: 10 across is 31.415926… around. */
  public static double around(double across) {
    return Math.PI * across;
  }

  /** The area within, in the square of that unit: 10 across is 78.539816…. */
  public static double area(double across) {
    return Math.PI / 4 * across * across;
  }
}
