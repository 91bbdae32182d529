package frillbook.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

/**
 * Against commons-math3's integrals along the outline dz/dx = −x²/√(1 − x⁴) of a balloon of radius
 * 1, with x = sin θ so that nothing is infinite at the rim.
 */
class MylarBalloonTest {
  private static final double FLAT_RADIUS = integral(t -> 1 / bend(t));

  private static double integral(UnivariateFunction f) {
    return new IterativeLegendreGaussIntegrator(12, 1e-14, 1e-14)
        .integrate(1_000_000, f, 0, Math.PI / 2);
  }

  private static double bend(double angle) {
    return Math.sqrt(1 + Math.pow(Math.sin(angle), 2));
  }

  @Test
  void theDiameterShrinksAsTheOutlineIsAsLongAsTheFlatRadius() {
    assertEquals(1, MylarBalloon.RADIUS * FLAT_RADIUS, 1e-12);
  }

  @Test
  void theThicknessIsTwiceTheHeightOfTheOutline() {
    double height = integral(t -> Math.pow(Math.sin(t), 2) / bend(t));
    assertEquals(2 * height, MylarBalloon.THICKNESS * FLAT_RADIUS, 2e-12);
  }

  /** Shells of radius x and height 2z hold 4π∫xz dx, by parts 2π∫x⁴/√(1 − x⁴) dx. */
  @Test
  void theVolumeIsThatOfTheBodyUnderTheOutline() {
    double volume = 2 * Math.PI * integral(t -> Math.pow(Math.sin(t), 4) / bend(t));
    assertEquals(volume, MylarBalloon.volume(FLAT_RADIUS), 4e-12);
  }

  /**
   * Radius, thickness and volume for a flat radius of 1, from the lemniscate constants: Paulsen,
   * Amer. Math. Monthly 101 (1994) 953–958; Pulov, Kovalchuk, Mladenov, Mathematics 12(4) 557
   * (2024).
   */
  @Test
  void theFiguresAreThosePublished() {
    assertEquals(.7627598, MylarBalloon.RADIUS, 5e-8);
    assertEquals(.9138932, MylarBalloon.THICKNESS, 5e-8);
    assertEquals(1.2185242, MylarBalloon.volume(1), 5e-8);
  }
}
