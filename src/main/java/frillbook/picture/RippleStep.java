package frillbook.picture;

/**
 * One Newton step towards the sine whose arc is {@code fullness} times its base line.
 *
 * <p>With q = 2π·amplitude/wavelength the arc over the base line is (2/π)√(1+q²)·E(m), m =
 * q²/(1+q²), E being the complete elliptic integral of the second kind. Arithmetic-geometric means
 * a, b of 1 and 1/√(1+q²) give K = π/2a and E = K(1 − ½Σ2ⁿcₙ²), c₀² = m (Abramowitz &amp; Stegun
 * 17.6).
 *
 * @param rippleQ the slope of the sine where it crosses its base line; 0 for no ripple
 * @param rippleStart √(1−m), the first geometric mean
 * @param rippleA1 arithmetic mean after one step; so on to the fifth
 * @param rippleB1 geometric mean after one step; so on to the fourth
 * @param rippleK complete integral of the first kind
 * @param rippleE of the second kind
 * @param rippleFullness the arc over the base line at this q; 1.216006723 at q = 1
 * @param rippleNext q after this step
 */
public record RippleStep(
    double rippleQ,
    double rippleStart,
    double rippleA1,
    double rippleB1,
    double rippleA2,
    double rippleB2,
    double rippleA3,
    double rippleB3,
    double rippleA4,
    double rippleB4,
    double rippleA5,
    double rippleK,
    double rippleE,
    double rippleFullness,
    double rippleNext) {

  static RippleStep of(double q, double fullness) {
    double start = 1 / Math.sqrt(1 + q * q);
    double a1 = (1 + start) / 2;
    double b1 = Math.sqrt(start);
    double a2 = (a1 + b1) / 2;
    double b2 = Math.sqrt(a1 * b1);
    double a3 = (a2 + b2) / 2;
    double b3 = Math.sqrt(a2 * b2);
    double a4 = (a3 + b3) / 2;
    double b4 = Math.sqrt(a3 * b3);
    double a5 = (a4 + b4) / 2;
    double k = Math.PI / 2 / a5;
    double spread =
        (1 - start * start) / 2
            + (1 - start) * (1 - start) / 4
            + (a1 - b1) * (a1 - b1) / 2
            + (a2 - b2) * (a2 - b2)
            + (a3 - b3) * (a3 - b3) * 2
            + (a4 - b4) * (a4 - b4) * 4;
    double e = k * (1 - spread);
    double reached = 2 / Math.PI * e / start;
    double next = q == 0 ? 0 : q - (reached - fullness) * q / (reached - 2 / Math.PI * k * start);
    return new RippleStep(
        q, start, a1, b1, a2, b2, a3, b3, a4, b4, a5, k, e, reached, Math.max(0, next));
  }
}
