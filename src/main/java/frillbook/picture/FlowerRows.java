package frillbook.picture;

import frillbook.measure.Rounding;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * The sewn rows as they are drawn; 1 is half the picture, angles are in radians.
 *
 * <p>Steps are equally long along the rows: equal steps of the area they have passed, and so of the
 * square of the angle that a spiral has turned since the middle.
 *
 * @param flowerBegin angle a spiral from the middle has turned where the rows begin
 * @param flowerFrom its square
 * @param flowerStep what a step adds to the square
 * @param flowerFirst where a spiral begins, or the first separate ring
 * @param flowerGap ring spacing
 * @param flowerClimb of the spiral in a radian; a full circle climbs one spacing
 * @param flowerThrow amplitude of the ripple
 */
public record FlowerRows(
    double flowerBegin,
    double flowerFrom,
    double flowerStep,
    double flowerFirst,
    double flowerGap,
    double flowerClimb,
    double flowerThrow) {
  private static final double CIRCLE = 2 * Math.PI;

  static FlowerRows of(FlowerShape shape, boolean spiral) {
    double begin = CIRCLE * shape.flowerHole() / shape.flowerSpacing();
    double gap = shape.flowerScale() * shape.flowerSpacing();
    double first = shape.flowerHole() + (spiral ? 0 : shape.flowerSpacing() / 2);
    return new FlowerRows(
        begin,
        begin * begin,
        2 * CIRCLE * shape.flowerRun() / shape.flowerPoints(),
        shape.flowerScale() * first,
        gap,
        gap / CIRCLE,
        gap * shape.flowerSwing());
  }

  /** {@code steps} + 1 points; those beyond {@link FlowerShape#flowerPoints} stay at the end. */
  List<FlowerPoint> points(FlowerShape shape, boolean spiral, int steps) {
    double lastRing = shape.flowerTurns() - 1;
    DoubleUnaryOperator climb =
        spiral
            ? angle -> flowerClimb * angle
            : angle -> flowerGap * Math.min(lastRing, Rounding.down(angle / CIRCLE));
    return IntStream.rangeClosed(0, steps)
        .mapToObj(i -> at(Math.min(i, shape.flowerPoints()), climb))
        .toList();
  }

  private FlowerPoint at(int step, DoubleUnaryOperator climb) {
    double angle = Rounding.traced(Math.sqrt(flowerFrom + flowerStep * step) - flowerBegin);
    double radius = Rounding.traced(flowerFirst + climb.applyAsDouble(angle) + sway(step));
    return new FlowerPoint(
        angle,
        radius,
        Rounding.drawn(radius * Math.cos(angle)),
        Rounding.drawn(radius * Math.sin(angle)));
  }

  /** On the row, at a crest, on the row, in a trough, and again. */
  private double sway(int step) {
    return switch (step % 4) {
      case 1 -> flowerThrow;
      case 3 -> -flowerThrow;
      default -> 0;
    };
  }
}
