package frillbook.picture;

import frillbook.measure.Rounding;

/**
 * A ring of petals: a wave about the sewn line.
 *
 * @param petalRadius of the sewn line, in the picture; 0 for no ring
 * @param petalCount petals once round
 * @param petalSwing amplitude of the wave; below 0 where it is turned by half a petal
 */
public record PetalRing(double petalRadius, int petalCount, double petalSwing) {
  static final PetalRing NONE = new PetalRing(0, 0, 0);

  /** How far out it reaches at {@code step}. */
  double out(int step) {
    return Rounding.drawn(petalRadius + petalSwing * Flower.cosine(petalCount * step));
  }
}
