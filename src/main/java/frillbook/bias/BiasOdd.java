package frillbook.bias;

import frillbook.cutting.OddPiece;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A bias strip shorter than the full ones, in order of length. A strip of a pair is cut only with
 * its partner, which is the next of its kind.
 *
 * @param odd its cut length; 0 where there are no more
 * @param oddPaired strips of pairs among it and the longer ones; of equal length singles come first
 * @param oddJoined what it and the longer ones add to the run
 * @param oddReady the same while no strip of a pair lacks its partner, else as it was before
 */
public record BiasOdd(double odd, int oddPaired, double oddJoined, double oddReady) {

  static List<BiasOdd> sorted(List<CornerStrips> corners, Join join) {
    double[] singles = corners.stream().flatMapToDouble(CornerStrips::singles).toArray();
    double[] paired = corners.stream().flatMapToDouble(CornerStrips::paired).toArray();
    List<BiasOdd> odds = new ArrayList<>();
    double ready = 0;
    for (OddPiece piece :
        OddPiece.sorted(corners.stream().flatMapToDouble(CornerStrips::lengths), join)) {
      int longer = count(paired, piece.odd() + Rounding.TINY);
      int atLeast = count(singles, piece.odd() - Rounding.TINY);
      int pairedSoFar = piece.odd() > 0 ? Math.max(longer, odds.size() + 1 - atLeast) : longer;
      ready = pairedSoFar % 2 == 0 ? piece.oddJoined() : ready;
      odds.add(new BiasOdd(piece.odd(), pairedSoFar, piece.oddJoined(), ready));
    }
    return List.copyOf(odds);
  }

  private static int count(double[] lengths, double least) {
    return (int) DoubleStream.of(lengths).filter(length -> length > least).count();
  }

  /** The strip whether or not it has its partner. */
  public OddPiece piece() {
    return new OddPiece(odd, oddJoined);
  }

  /** The strip as it counts towards a need. */
  OddPiece ready() {
    return new OddPiece(odd, oddReady);
  }
}
