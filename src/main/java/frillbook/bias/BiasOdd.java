package frillbook.bias;

import frillbook.cutting.OddPiece;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A bias strip shorter than the full ones, in order of length. A strip of a pair whose partner, the
 * next of its kind, is not needed is recut at one end: it counts as its shorter side.
 *
 * @param odd its cut length; 0 where there are no more
 * @param oddPaired strips of pairs among it and the longer ones; of equal length singles come first
 * @param oddJoined what it and the longer ones add to the run
 * @param oddReady the same, but a strip of a pair without its partner as its shorter side
 */
public record BiasOdd(double odd, int oddPaired, double oddJoined, double oddReady) {

  /**
   * Longest first.
   *
   * @param width of a strip; by so much the mean of a corner strip's sides exceeds the shorter
   */
  static List<BiasOdd> sorted(List<CornerStrips> corners, Join join, double width) {
    double[] singles = corners.stream().flatMapToDouble(CornerStrips::singles).toArray();
    double[] paired = corners.stream().flatMapToDouble(CornerStrips::paired).toArray();
    List<BiasOdd> odds = new ArrayList<>();
    for (OddPiece piece :
        OddPiece.sorted(corners.stream().flatMapToDouble(CornerStrips::lengths), join)) {
      int longer = count(paired, piece.odd() + Rounding.TINY);
      int atLeast = count(singles, piece.odd() - Rounding.TINY);
      int pairedSoFar = piece.odd() > 0 ? Math.max(longer, odds.size() + 1 - atLeast) : longer;
      double ready = piece.oddJoined() - pairedSoFar % 2 * width * join.gain();
      odds.add(new BiasOdd(piece.odd(), pairedSoFar, piece.oddJoined(), ready));
    }
    return List.copyOf(odds);
  }

  private static int count(double[] lengths, double least) {
    return (int) DoubleStream.of(lengths).filter(length -> length > least).count();
  }

  /** Which of the first {@code count} lacks its partner, from 1; 0 for none. */
  static int lone(List<BiasOdd> odds, int count) {
    int paired = count == 0 ? 0 : odds.get(count - 1).oddPaired();
    int before = (int) odds.stream().filter(odd -> odd.oddPaired() < paired).count();
    return paired % 2 == 0 ? 0 : before + 1;
  }

  /** The strip with its partner. */
  public OddPiece piece() {
    return new OddPiece(odd, oddJoined);
  }

  /** The strip as it counts towards a need, and where its partner is not cut. */
  public OddPiece ready() {
    return new OddPiece(odd, oddReady);
  }
}
