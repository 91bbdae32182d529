package frillbook.picture;

import frillbook.measure.Rounding;
import frillbook.naming.Indexed;
import frillbook.naming.Prefixed;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The cushion from above, as rings of petals that lie over each other; 1 is half the picture.
 *
 * @param petalRings from the outermost in; those beyond the rings drawn are nothing
 * @param petals how far out each ring reaches, step by step round; it is there without a plan too,
 *     and then nothing is drawn
 */
public record Flower(List<PetalRing> petalRings, List<PetalStep> petals) {
  static final int MOST_RINGS = 12;

  /** Once round; the petals of every ring divide it. */
  static final int STEPS = 144;

  /** Steps that repeat the beginning, for a copy of each ring that is turned by one. */
  static final int MORE_STEPS = 1;

  private static final double[] COSINES =
      IntStream.range(0, STEPS)
          .mapToDouble(step -> Rounding.settle(Math.cos(2 * Math.PI * step / STEPS)) + 0.0)
          .toArray();

  /**
   * The petals at one step.
   *
   * @param flowerCosine of the step's angle
   */
  public record PetalStep(
      double flowerCosine, @Prefixed("petal") @Indexed(MOST_RINGS) List<PetalOut> rings) {}

  /**
   * A place on one ring.
   *
   * @param out from the centre
   */
  public record PetalOut(double out) {}

  /** {@code depth} is a ripple's amplitude over its length. */
  public static Flower of(Optional<FlowerShape> shape, double depth) {
    List<PetalRing> rings =
        shape
            .map(
                drawn ->
                    IntStream.rangeClosed(1, MOST_RINGS)
                        .mapToObj(number -> drawn.ring(number, depth))
                        .toList())
            .orElse(Collections.nCopies(MOST_RINGS, PetalRing.NONE));
    return new Flower(
        rings,
        IntStream.range(0, STEPS + MORE_STEPS).mapToObj(step -> petals(rings, step)).toList());
  }

  private static PetalStep petals(List<PetalRing> rings, int step) {
    return new PetalStep(
        cosine(step), rings.stream().map(ring -> new PetalOut(ring.out(step))).toList());
  }

  static double cosine(int step) {
    return COSINES[step % STEPS];
  }
}
