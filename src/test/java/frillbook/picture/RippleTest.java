package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RippleTest {
  /** Computed from (2/π)√(1 + q²)E(q²/(1 + q²)), q = 2π·amplitude/wavelength. */
  @ParameterizedTest
  @CsvSource({"1.25,.172995", "1.5,.262020", "2,.413895", "2.5,.553776", "3,.688620"})
  void aFullnessHasItsDepth(double fullness, double depth) {
    assertEquals(depth, Ripple.of(fullness).rippleDepth(), 5e-7);
  }

  /** OEIS A105419: one period of sin x is 7.640395578… long, 1.216006723 of its base line. */
  @Test
  void theSineOfSlopeOneHasItsLength() {
    assertEquals(7.640395578055424 / (2 * Math.PI), RippleStep.of(1, 2).rippleFullness(), 1e-14);
  }

  /** Abramowitz &amp; Stegun, Table 17.1, by the parameter m; q² = m/(1 − m). */
  @ParameterizedTest
  @CsvSource({"0,1.570796326795", "0.1,1.530757636898", "0.5,1.350643881048", "0.9,1.104774732704"})
  void theEllipticIntegralIsTheOneInTheTables(double m, double e) {
    assertEquals(e, RippleStep.of(Math.sqrt(m / (1 - m)), 2).rippleE(), 1e-12);
  }

  /** As deep as it comes, m goes to 1 and E to 1 (the same table). */
  @Test
  void theEllipticIntegralOfAVerySteepSineIsAlmostOne() {
    assertEquals(1, RippleStep.of(50, 6).rippleE(), 2e-3);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.001, 1.1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6})
  void theArcOfTheSineIsTheFullness(double fullness) {
    double q = 2 * Math.PI * Ripple.of(fullness).rippleDepth();
    double quarter =
        new IterativeLegendreGaussIntegrator(24, 1e-13, 1e-13)
            .integrate(1_000_000, x -> Math.sqrt(1 + Math.pow(q * Math.cos(x), 2)), 0, Math.PI / 2);
    assertEquals(fullness, quarter / (Math.PI / 2), 1e-10);
  }

  @Test
  void anUngatheredFrillHasNoRipples() {
    assertEquals(0, Ripple.of(1).rippleDepth());
  }

  /** By hand: near 1 a sine is 1 + q²/4 times its base line, so 2 √(2 − 1) is tried for 2. */
  @Test
  void sixStepsBeginWithWhatHoldsForAlmostFlatOnes() {
    assertEquals(6, Ripple.of(2).ripples().size());
    assertEquals(2, Ripple.of(2).ripples().get(0).rippleQ());
    assertEquals(1, Ripple.of(1.25).ripples().get(0).rippleQ());
  }

  @Test
  void aRippleIsTwiceAsHighAsItIsDeep() {
    assertEquals(2 * .413895, Ripple.of(2).rippleHeight(), 1e-6);
  }

  /** By hand: twice √(4 × .00007) ÷ 2π is .0053 of its length, and .0045 for .00005. */
  @ParameterizedTest
  @CsvSource({"1, false", "1.00005, false", "1.00007, true", "2, true"})
  void ripplesShowFromHalfAHundredthOn(double fullness, boolean show) {
    assertEquals(show, Ripple.of(fullness).ripplesShow());
  }
}
