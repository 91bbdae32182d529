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
  private static final int NEWTON_STEPS = 3;

  /** Length from the centre out to {@code radius} (at least 0), in the unit of the spacing. */
  public double lengthTo(double radius) {
    return spacing / (4 * Math.PI) * doubleArc(angleAt(radius));
  }

  /** The angle φ, in radians from the centre, at which the spiral has reached {@code radius}. */
  public double angleAt(double radius) {
    return 2 * Math.PI * radius / spacing;
  }

  /**
   * The angle φ reached after {@code length} from the centre: the inverse of {@link #lengthTo}.
   *
   * <p>Newton's rule from √(4πL/b), three steps: within 1e-11 turns of the truth after the first
   * turn, within 1e-7 turns inside it.
   */
  public double angleAfter(double length) {
    double target = 4 * Math.PI * length / spacing;
    double angle = Math.sqrt(target);
    for (int step = 0; step < NEWTON_STEPS; step++) {
      angle = closer(angle, target);
    }
    return angle;
  }

  /** One Newton step from {@code angle} towards the one whose double arc is {@code target}. */
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
