package frillbook.picture;

import frillbook.measure.Rounding;

/** A place in a picture. */
public record Spot(double x, double y) {
  /** From an edge of the fabric to where a line turns that is not to be seen beyond it. */
  private static final double INSIDE = .006;

  /** Half-way to another, inside the fabric whose far corner lies at {@code far}. */
  Spot halfway(Spot other, Spot far) {
    return new Spot(inside((x + other.x) / 2, far.x), inside((y + other.y) / 2, far.y));
  }

  private static double inside(double place, double most) {
    return Rounding.drawn(Math.max(INSIDE, Math.min(most - INSIDE, place)));
  }
}
