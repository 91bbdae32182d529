package frillbook.picture;

import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The free edge of the outermost frill, and the edge of the base; 1 is half the picture.
 *
 * @param flowerMiddle radius the free edge swings about
 * @param flowerTip its largest radius
 * @param flowerHollow its smallest
 * @param flowerRimStep radians from point to point of the free edge, four for a ripple
 * @param flowerBrim radius of the base
 * @param flowerEdgeStep radians from point to point of the base
 */
public record FlowerRim(
    double flowerMiddle,
    double flowerTip,
    double flowerHollow,
    double flowerRimStep,
    double flowerBrim,
    double flowerEdgeStep) {
  /** Ripples of the free edge. A multiple of four makes it as wide as it is high. */
  static final int PETALS = 24;

  private static final int EDGE_STEPS = 32;

  static FlowerRim of(FlowerShape shape) {
    double middle = shape.flowerScale() * shape.flowerRim();
    return new FlowerRim(
        middle,
        middle * (1 + shape.flowerPetal()),
        middle * (1 - shape.flowerPetal()),
        2 * Math.PI / (4 * PETALS),
        shape.flowerScale() * shape.flowerEdge(),
        2 * Math.PI / EDGE_STEPS);
  }

  List<RimPoint> rims() {
    return IntStream.rangeClosed(0, 4 * PETALS)
        .mapToObj(
            i -> {
              double angle = flowerRimStep * i;
              return new RimPoint(
                  Rounding.drawn(far(i) * Math.cos(angle)),
                  Rounding.drawn(far(i) * Math.sin(angle)));
            })
        .toList();
  }

  /** Tip, middle, hollow, middle, and again. */
  private double far(int step) {
    return switch (step % 4) {
      case 0 -> flowerTip;
      case 2 -> flowerHollow;
      default -> flowerMiddle;
    };
  }

  List<EdgePoint> edges() {
    return IntStream.rangeClosed(0, EDGE_STEPS)
        .mapToDouble(i -> flowerEdgeStep * i)
        .mapToObj(
            a ->
                new EdgePoint(
                    Rounding.drawn(flowerBrim * Math.cos(a)),
                    Rounding.drawn(flowerBrim * Math.sin(a))))
        .toList();
  }
}
