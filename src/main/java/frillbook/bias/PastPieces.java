package frillbook.bias;

import frillbook.measure.Rounding;
import java.util.function.Predicate;

/**
 * What the strips that are cut past a line of discs add to the run.
 *
 * @param whole net length of those that begin at the long edge
 * @param shortened net length of the others, which begin at the far short edge and are shorter
 */
public record PastPieces(double whole, double shortened) {

  /**
   * @param shorter side of the fabric
   * @param room past the line of discs ({@link BiasComb#room})
   * @param least the shortest strip that counts
   */
  static PastPieces of(BiasCutting cutting, double shorter, double room, double least) {
    Predicate<PastDisc> reaches = strip -> strip.pastReach() <= room + Rounding.TINY;
    double whole = net(cutting, shorter, least, room, reaches);
    double shortened = net(cutting, shorter, least, room, reaches.negate());
    return new PastPieces(whole, shortened);
  }

  /** Of both. */
  double both() {
    return whole + shortened;
  }

  private static double net(
      BiasCutting cutting, double shorter, double least, double room, Predicate<PastDisc> some) {
    return cutting.past().stream()
        .filter(some)
        .mapToDouble(strip -> cutting.pastPiece(strip, shorter, room, least))
        .filter(length -> length > 0)
        .map(cutting::worth)
        .sum();
  }
}
