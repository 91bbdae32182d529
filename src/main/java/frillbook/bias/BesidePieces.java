package frillbook.bias;

import java.util.function.ToDoubleFunction;

/**
 * What the strips that the disc in a corner cuts in two add to the run, or where every cushion has
 * its own strips, how many of them can be a cushion's last. Lengths are in the unit of the brief; 0
 * without a disc.
 *
 * @param right net length of the pieces towards one edge
 * @param left net length of those towards the other
 */
public record BesidePieces(double right, double left) {

  /**
   * @param shorter side of the fabric, which the cut lines must meet
   * @param least the shortest piece that counts
   * @param slack how far the disc is pushed out, along the sum of both edges
   */
  static BesidePieces of(
      BiasCutting cutting, double shorter, double least, double slack, boolean disc) {
    double right = disc ? net(cutting, shorter, least, slack, BesideDisc::besideRight) : 0;
    double left = disc ? net(cutting, shorter, least, slack, BesideDisc::besideLeft) : 0;
    return new BesidePieces(right, left);
  }

  /** Of both. */
  double both() {
    return right + left;
  }

  private static double net(
      BiasCutting cutting,
      double shorter,
      double least,
      double slack,
      ToDoubleFunction<BesideDisc> side) {
    return cutting.beside().stream()
        .mapToDouble(b -> b.piece(side.applyAsDouble(b), least, shorter, slack))
        .filter(piece -> piece > 0)
        .map(cutting::worth)
        .sum();
  }
}
