package frillbook.fill;

import frillbook.brief.Brief;
import frillbook.brief.FillSpec;
import frillbook.brief.FillSpec.Sort;
import frillbook.measure.Rounding;

/**
 * How wide and thick a cushion is when it is filled to a share of what it holds at most. Fabric
 * does not stretch: from centre to edge over the top the cover stays as long as its flat radius.
 *
 * <p>Two shapes keep that length and hold the share. A flattened ball (spheroid), half as thick as
 * wide by the ratio k, has the radius 1/E(1 − k²) of the flat one and holds (4π/3)k·radius³. Two
 * caps of a ball, each of the angle θ, have the radius sin θ/θ, are 2(1 − cos θ)/θ thick and hold
 * (2π/3)(1 − cos θ)²(2 + cos θ)/θ³. They are nearly as wide as each other, and a real cushion is
 * thicker than the one and thinner than the other. k and θ come from the share by fitted
 * polynomials of the root of what is left to the most that the shape can hold; the width is within
 * 0.00003 of the flat radius, the thicknesses within 0.0001, of what the exact k and θ give.
 *
 * <p>The ball holds 99.3 % of the Mylar balloon at most, the caps 95.6 %. So past 90 % the shape
 * goes over to the balloon's, by the root of what is left, as shapes do near the most they hold.
 *
 * <p>A disc of foam is as thick as it is bought, half the cushion's diameter at most.
 *
 * @param shapeShare the share, 0.3 to 0.9, of the balloon's volume that both shapes hold
 * @param fillSlack 1 up to there, 0 for the balloon
 * @param capAngle θ
 * @param spheroidRatio k
 * @param spheroidRadius for a flat radius of 1
 * @param filledDiameter across, the mean of both
 * @param filledThicknessLow through the middle, of the flattened ball
 * @param filledThicknessHigh of the two caps
 */
public record FilledShape(
    double shapeShare,
    double fillSlack,
    double capAngle,
    double spheroidRatio,
    double spheroidRadius,
    double filledDiameter,
    double filledThicknessLow,
    double filledThicknessHigh) {
  private static final double LAST_SHARE = .9;

  /** What two caps hold at most, as a share. */
  private static final double CAPS_HOLD = .955683;

  /** What a flattened ball holds at most. */
  private static final double SPHEROID_HOLDS = .993191;

  /** The shape that the brief's filling gives the cushion. */
  static FilledShape of(Brief brief) {
    double diameter = brief.cushion().diameter();
    FillSpec spec = brief.fill();
    if (spec.filling() != Sort.FOAM_DISC) {
      return of(diameter, spec.fillFraction());
    }
    FilledShape unused = of(diameter, LAST_SHARE);
    return unused.around(diameter, Math.min(spec.foamThickness(), diameter / 2));
  }

  /** A cushion {@code diameter} across when flat, filled to {@code share}, 0.3 to 1. */
  static FilledShape of(double diameter, double share) {
    double shown = Math.min(share, LAST_SHARE);
    double slack = Math.sqrt(Math.min(1, Rounding.settleSquare((1 - share) * 10)));
    double angle = cubic(CAPS_HOLD - shown, 1.224448, -1.273095, .262472, -.241936);
    double ratio = cubic(SPHEROID_HOLDS - shown, .627213, -.856801, .38633, -.157276);
    double spheroid = 1 / ellipticE(ratio * ratio);
    double radius = (spheroid + Math.sin(angle) / angle) / 2;
    double flat = diameter / 2;
    return new FilledShape(
        shown,
        slack,
        angle,
        ratio,
        spheroid,
        diameter * between(MylarBalloon.RADIUS, radius, slack),
        flat * between(MylarBalloon.THICKNESS, 2 * ratio * spheroid, slack),
        flat * between(MylarBalloon.THICKNESS, 2 * (1 - Math.cos(angle)) / angle, slack));
  }

  /** The cover goes up the edge of the foam, half its thickness from either side. */
  private FilledShape around(double diameter, double foam) {
    return new FilledShape(
        shapeShare,
        fillSlack,
        capAngle,
        spheroidRatio,
        spheroidRadius,
        diameter - foam,
        foam,
        foam);
  }

  /** Half-way between thinnest and thickest. */
  public double meanThickness() {
    return (filledThicknessLow + filledThicknessHigh) / 2;
  }

  private static double between(double taut, double slack, double share) {
    return taut + share * (slack - taut);
  }

  private static double cubic(double left, double c0, double c1, double c2, double c3) {
    double root = Math.sqrt(left);
    return c0 + root * (c1 + root * (c2 + root * c3));
  }

  /**
   * The complete elliptic integral of the second kind by 1 − m, to 0.00004: Abramowitz and Stegun,
   * 17.3.35.
   */
  private static double ellipticE(double rest) {
    double square = rest * rest;
    return 1
        + .463015 * rest
        + .107781 * square
        - (.245273 * rest + .04125 * square) * Math.log(rest);
  }
}
