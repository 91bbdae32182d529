package frillbook.picture;

import frillbook.measure.Rounding;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Points of the outlines of equal pieces, in the order in which these are cut. */
final class DrawnPieces {
  /** Pieces of one kind that are drawn at most. */
  static final int MOST = 12;

  private static final Spot NOWHERE = new Spot(0, 0);

  private DrawnPieces() {}

  /**
   * The point that lies {@code step} from the place of each piece. The first {@code drawn} pieces
   * have one; those of the others lie in the corner of the fabric, where nothing is seen of them.
   */
  static List<Spot> from(List<Spot> places, int drawn, Spot step) {
    return from(places, drawn, piece -> step);
  }

  /** The same where the step is each piece's own. */
  static List<Spot> from(List<Spot> places, int drawn, IntFunction<Spot> step) {
    return IntStream.range(0, MOST)
        .mapToObj(piece -> piece < drawn ? away(places.get(piece), step.apply(piece)) : NOWHERE)
        .toList();
  }

  private static Spot away(Spot place, Spot step) {
    return new Spot(Rounding.drawn(place.x() + step.x()), Rounding.drawn(place.y() + step.y()));
  }
}
