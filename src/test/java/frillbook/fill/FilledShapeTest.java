package frillbook.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A cover 2 across, so that lengths are for a flat radius of 1. */
class FilledShapeTest {
  /** Mylar balloon, published: Paulsen, Amer. Math. Monthly 101 (1994) 953–958. */
  private static final double MOST = 1.2185242;

  private static FilledShape shape(double share) {
    return FilledShape.of(2, share);
  }

  /** By commons-math3's quadrature of ∫√(1 − (1 − k²)sin²t)dt from 0 to π/2. */
  private static double spheroidRadius(double k) {
    double quarter =
        new IterativeLegendreGaussIntegrator(24, 1e-12, 1e-12)
            .integrate(
                1_000_000,
                t -> Math.sqrt(1 - (1 - k * k) * Math.pow(Math.sin(t), 2)),
                0,
                Math.PI / 2);
    return 1 / quarter;
  }

  private static double spheroidHolds(double k) {
    return 4 * Math.PI / 3 * k * Math.pow(spheroidRadius(k), 3);
  }

  private static double capsHold(double angle) {
    double lid = 1 - Math.cos(angle);
    return 2 * Math.PI / 3 * lid * lid * (3 - lid) / Math.pow(angle, 3);
  }

  /** By commons-math3's root finding. */
  private static double holding(double share, DoubleUnaryOperator holds, double most) {
    return new BrentSolver(1e-12)
        .solve(1000, x -> holds.applyAsDouble(x) - share * MOST, 1e-3, most);
  }

  /** Exactly: the root of each volume, and what the closed forms make of it. */
  @ParameterizedTest
  @ValueSource(doubles = {.3, .33, .37, .42, .48, .55, .6, .65, .7, .75, .8, .84, .87, .89, .9})
  void itIsTheShapeThatHoldsTheShare(double share) {
    double k = holding(share, FilledShapeTest::spheroidHolds, .63);
    double angle = holding(share, FilledShapeTest::capsHold, 1.22);
    double wide = (spheroidRadius(k) + Math.sin(angle) / angle) / 2;
    assertEquals(2 * wide, shape(share).filledDiameter(), 6e-5);
    assertEquals(2 * k * spheroidRadius(k), shape(share).filledThicknessLow(), 1e-4);
    assertEquals(2 * (1 - Math.cos(angle)) / angle, shape(share).filledThicknessHigh(), 1e-4);
  }

  /**
   * Computed from exact definitions: a spheroid of k .2 has the radius .951926 and holds .722649,
   * .593053 of what a balloon does; of .3, .912011 and .953258, .782305.
   */
  @ParameterizedTest
  @CsvSource({".593053, .2, .951926", ".782305, .3, .912011"})
  void aFlattenedBallHasTheRadiusComputedForIt(double share, double ratio, double radius) {
    assertEquals(ratio, shape(share).spheroidRatio(), 1e-4);
    assertEquals(radius, shape(share).spheroidRadius(), 1e-4);
    assertEquals(2 * ratio * radius, shape(share).filledThicknessLow(), 1e-4);
  }

  /**
   * Computed from exact definitions: caps of .3 are .297757 thick and hold .457307, .375296 of what
   * a balloon does; of .5, .489670 and .722542, .592965.
   */
  @ParameterizedTest
  @CsvSource({".375296, .3, .297757", ".592965, .5, .489670"})
  void twoCapsHaveTheThicknessComputedForThem(double share, double angle, double thick) {
    assertEquals(angle, shape(share).capAngle(), 1e-4);
    assertEquals(thick, shape(share).filledThicknessHigh(), 1e-4);
  }

  /** The spheroid of k .2 and the caps of .5 hold the same: (.951926 + .958851) ÷ 2 is .955389. */
  @Test
  void itIsAsWideAsBothShapesInTheMean() {
    assertEquals(2 * .955389, shape(.593009).filledDiameter(), 1e-4);
  }

  /** As worked for makers: 18 in at 60 % is 17.1 to 17.2 in across and 3.5 to 4.5 in thick. */
  @Test
  void eighteenInchesFilledToSixtyPerCent() {
    FilledShape shape = FilledShape.of(18, .6);
    assertTrue(shape.filledDiameter() > 17.1 && shape.filledDiameter() < 17.2);
    assertEquals(3.5, shape.filledThicknessLow(), .05);
    assertEquals(4.5, shape.filledThicknessHigh(), .05);
    assertEquals(4, shape.meanThickness(), .05);
  }

  /** Radius .7627598 and thickness .9138932 of the balloon, as published. */
  @Test
  void tautItIsTheBalloon() {
    assertEquals(2 * .7627598, shape(1).filledDiameter(), 2e-7);
    assertEquals(.9138932, shape(1).filledThicknessLow(), 1e-7);
    assertEquals(.9138932, shape(1).filledThicknessHigh(), 1e-7);
  }

  @Test
  void theMoreItIsFilledTheNarrowerAndThickerItIs() {
    for (int percent = 31; percent <= 100; percent++) {
      FilledShape less = shape((percent - 1) / 100.0);
      FilledShape more = shape(percent / 100.0);
      assertTrue(more.filledDiameter() < less.filledDiameter(), percent + " %");
      assertTrue(more.filledThicknessLow() > less.filledThicknessLow(), percent + " %");
      assertTrue(more.filledThicknessHigh() > less.filledThicknessHigh(), percent + " %");
    }
  }
}
