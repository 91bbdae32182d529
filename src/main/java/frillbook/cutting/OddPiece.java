package frillbook.cutting;

import frillbook.strip.Join;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A strip shorter than the full ones, in order of length.
 *
 * @param odd its cut length; 0 where there are no more
 * @param oddJoined what it and the longer ones before it add to the run
 */
public record OddPiece(double odd, double oddJoined) {
  /** The most a plan can have: two corners of bias strips, and the pieces beside two discs. */
  public static final int MOST = 72;

  /** Longest first, padded with nothing to {@link #MOST}. */
  public static List<OddPiece> sorted(DoubleStream lengths, Join join) {
    List<Double> longestFirst = lengths.boxed().sorted(Comparator.reverseOrder()).toList();
    List<OddPiece> pieces = new ArrayList<>();
    double joined = 0;
    for (int i = 0; i < MOST; i++) {
      double length = i < longestFirst.size() ? longestFirst.get(i) : 0;
      joined += length > 0 ? join.net(length) : 0;
      pieces.add(new OddPiece(length, joined));
    }
    return List.copyOf(pieces);
  }
}
