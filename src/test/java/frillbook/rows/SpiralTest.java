package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpiralTest {
  private static final double TURN = 2 * Math.PI;

  /** commons-math3's integral of √(r² + r′²) between two angles, r = spacing × angle ÷ 2π. */
  static double integrated(double spacing, double from, double to) {
    var integrator = new IterativeLegendreGaussIntegrator(12, 1e-12, 1e-12);
    double slope = spacing / TURN;
    return integrator.integrate(1_000_000, angle -> Math.hypot(slope * angle, slope), from, to);
  }

  @Test
  void lengthAgreesWithNumericalIntegration() {
    for (double spacing : new double[] {.125, .25, .5, .75, 1, 2, 3.3, 6, 15}) {
      for (double radius : new double[] {.1, .5, 1, 2, 5.25, 9, 18, 30, 76}) {
        double expected = integrated(spacing, 0, TURN * radius / spacing);
        double length = new Spiral(spacing).lengthTo(radius);
        assertEquals(expected, length, 1e-9 * expected, () -> spacing + " to " + radius);
      }
    }
  }

  /** r = θ, 0…2π: 21.25629; worked on Mathematics Stack Exchange. */
  @Test
  void theFirstTurnOfTheUnitSpiralIsAsPublished() {
    assertEquals(21.25629, new Spiral(TURN).lengthTo(TURN), 5e-6);
  }

  /** 12 in to 4 in across in 600 turns: 15079.64532 in; Mathematics Stack Exchange Q3043209. */
  @Test
  void sixHundredTurnsBetweenTwoDiametersAreAsPublished() {
    Spiral spiral = new Spiral((6.0 - 2.0) / 600);
    assertEquals(15079.64532, spiral.lengthTo(6) - spiral.lengthTo(2), 5e-6);
  }

  /** Computed from the exact definition, to six places. */
  @ParameterizedTest
  @CsvSource({"40,2,629.167406", "16,1,201.468612"})
  void wholeDiscsAreAsComputed(double diameter, double spacing, double expected) {
    assertEquals(expected, new Spiral(spacing).lengthTo(diameter / 2), 5e-7);
  }

  @Test
  void nothingIsSewnToTheCentreItself() {
    assertEquals(0, new Spiral(.75).lengthTo(0));
  }

  @Test
  void oneTurnBringsTheSpiralOneSpacingOut() {
    assertEquals(TURN, new Spiral(.75).angleAt(.75), 1e-15);
    assertEquals(8 * TURN, new Spiral(.75).angleAt(6), 1e-14);
  }

  /** commons-math3's root of length − wanted. */
  private static double rootOf(Spiral spiral, double length) {
    double slope = spiral.spacing() / TURN;
    return new BrentSolver(1e-14, 1e-14)
        .solve(1000, angle -> spiral.lengthTo(slope * angle) - length, 0, 1e5);
  }

  private static double angleAfter(Spiral spiral, double length) {
    double target = 4 * Math.PI * length / spiral.spacing();
    return Spiral.closer(Spiral.closer(Spiral.closer(Math.sqrt(target), target), target), target);
  }

  /** Greatest difference, in turns, between the inverse and commons-math3's root. */
  private static double worst(double fromTurns, double toTurns) {
    double worst = 0;
    for (double spacing : new double[] {.125, .75, 6}) {
      Spiral spiral = new Spiral(spacing);
      for (int i = 0; i <= 200; i++) {
        double turns = fromTurns * Math.pow(toTurns / fromTurns, i / 200.0);
        double length = spiral.lengthTo(turns * spacing);
        double error = angleAfter(spiral, length) - rootOf(spiral, length);
        worst = Math.max(worst, Math.abs(error) / TURN);
      }
    }
    return worst;
  }

  /** Found: 2.3e-12 of a turn. */
  @Test
  void afterTheFirstTurnTheInverseAgreesWithARootFinder() {
    assertTrue(worst(1, 240) < 1e-11);
  }

  /** Found: 3.6e-8 of a turn, a sixth of a turn from the centre. */
  @Test
  void evenInTheFirstTurnTheInverseAgreesToASeventhPlace() {
    assertTrue(worst(1e-6, 1) < 1e-7);
  }
}
