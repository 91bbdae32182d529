package frillbook.picture;

import frillbook.measure.Rounding;

/**
 * How the rings of petals are laid out. The outermost ring stands a quarter of a spacing inside 1
 * until everything is scaled.
 *
 * @param flowerRings rings drawn: as many as are sewn, 12 at most
 * @param flowerThinned whether that is fewer than are sewn
 * @param flowerGap from ring to ring
 * @param flowerWanted petals that would make each as wide as it should be
 * @param flowerPetals petals of the outermost ring; one of a few numbers that divide the steps, so
 *     that all petals are alike, and by four, so that it is as wide as it is high
 * @param flowerScale what brings the tips of the outermost ring to 1
 */
public record FlowerShape(
    int flowerRings,
    boolean flowerThinned,
    double flowerGap,
    double flowerWanted,
    int flowerPetals,
    double flowerScale) {
  private static final double CIRCLE = 2 * Math.PI;

  /** A petal's width in spacings, at most and over the depth of a ripple. */
  private static final double WIDEST = 3;

  private static final double WIDTH = 1.3;

  /**
   * A petal swings 2π · depth ÷ petals of its ring's radius to either side; with so many petals for
   * a depth of one it stays clear of the centre.
   */
  private static final double CLEAR = 7;

  /** {@code depth} is a ripple's amplitude over its length. */
  public static FlowerShape of(int ringCount, double depth) {
    int rings = Math.min(Flower.MOST_RINGS, ringCount);
    double gap = 1 / (rings + .25);
    double wanted = CIRCLE / (gap * Math.min(WIDEST, WIDTH / Math.max(.01, depth)));
    int petals = Math.max(Rounding.settle(CLEAR * depth - 8) > 0 ? 12 : 8, near(wanted));
    double scale = 1 / ((rings - .25) * gap * (1 + CIRCLE * depth / petals));
    return new FlowerShape(rings, ringCount > rings, gap, wanted, petals, scale);
  }

  private static int near(double wanted) {
    double settled = Rounding.settle(wanted);
    if (settled < 10) {
      return 8;
    }
    return settled < 17 ? 12 : 24;
  }

  /** The {@code number}th ring from the outermost, which is the first. */
  PetalRing ring(int number, double depth) {
    if (number > flowerRings) {
      return PetalRing.NONE;
    }
    double radius = flowerScale * (flowerRings - number + .75) * flowerGap;
    int petals = petals(Math.max(CLEAR * depth, flowerPetals * radius / flowerScale));
    double swing = CIRCLE * depth * radius / petals;
    return new PetalRing(radius, petals, number % 2 == 0 ? 0 - swing : swing);
  }

  /** A half or a quarter of the outermost ring's, where that is {@code least} at least. */
  private int petals(double least) {
    int quarter = Math.max(4, flowerPetals / 4);
    if (Rounding.settle(quarter - least) >= 0) {
      return quarter;
    }
    return Rounding.settle(flowerPetals / 2 - least) >= 0 ? flowerPetals / 2 : flowerPetals;
  }
}
