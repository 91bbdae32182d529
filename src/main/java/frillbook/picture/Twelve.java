package frillbook.picture;

import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;
import java.util.List;

/** One point of the outline of each of twelve equal pieces, in the order they are cut. */
public record Twelve(
    @Prefixed("one") Spot one,
    @Prefixed("two") Spot two,
    @Prefixed("three") Spot three,
    @Prefixed("four") Spot four,
    @Prefixed("five") Spot five,
    @Prefixed("six") Spot six,
    @Prefixed("seven") Spot seven,
    @Prefixed("eight") Spot eight,
    @Prefixed("nine") Spot nine,
    @Prefixed("ten") Spot ten,
    @Prefixed("eleven") Spot eleven,
    @Prefixed("twelve") Spot twelve) {
  /** Pieces of one kind that are drawn at most. */
  static final int MOST = 12;

  private static final Spot NOWHERE = new Spot(0, 0);

  /**
   * The point that lies {@code step} from the place of its piece. The first {@code drawn} pieces
   * have one; those of the others lie in the corner of the cloth, where nothing is seen of them.
   */
  static Twelve from(List<Spot> places, int drawn, Spot step) {
    return new Twelve(
        spot(places, drawn, step, 0),
        spot(places, drawn, step, 1),
        spot(places, drawn, step, 2),
        spot(places, drawn, step, 3),
        spot(places, drawn, step, 4),
        spot(places, drawn, step, 5),
        spot(places, drawn, step, 6),
        spot(places, drawn, step, 7),
        spot(places, drawn, step, 8),
        spot(places, drawn, step, 9),
        spot(places, drawn, step, 10),
        spot(places, drawn, step, 11));
  }

  private static Spot spot(List<Spot> places, int drawn, Spot step, int piece) {
    if (piece >= drawn) {
      return NOWHERE;
    }
    Spot place = places.get(piece);
    return new Spot(Rounding.drawn(place.x() + step.x()), Rounding.drawn(place.y() + step.y()));
  }

  /** All twelve in their order. */
  List<Spot> all() {
    return List.of(one, two, three, four, five, six, seven, eight, nine, ten, eleven, twelve);
  }
}
