package frillbook.fill;

/**
 * The shape two flat discs of fabric that does not stretch, sewn edge to edge, take when they are
 * filled to the limit: the Mylar balloon.
 *
 * <p>Its outline bends by dz/dx = −x²/√(r⁴ − x⁴), r being its radius. With K = ∫dt/√(1 − t⁴) =
 * 1.311028777146 and M = ∫t²/√(1 − t⁴)dt = 0.599070117368, both over 0 to 1, a flat radius a gives
 * r = a/K, thickness 2aM/K and volume (2π/3)a³/K². W. Paulsen, What is the shape of a Mylar
 * balloon?, Amer. Math. Monthly 101 (1994) 953–958.
 *
 * <p>Real fabric creases at the edge instead of shrinking there, so a cushion comes near the shape
 * and does not reach it. Between flat and this limit, {@link FilledShape} says how wide it is.
 */
final class MylarBalloon {
  /** 1/K. */
  static final double RADIUS = 0.762759763502;

  /** 2M/K. */
  static final double THICKNESS = 0.913893162089;

  /** (2π/3)/K². */
  static final double VOLUME = 1.218524216119;

  private MylarBalloon() {}

  /** In the cube of the unit; 22.5 gives 13 880. */
  static double volume(double flatRadius) {
    return VOLUME * flatRadius * flatRadius * flatRadius;
  }
}
