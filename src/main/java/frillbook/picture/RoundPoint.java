package frillbook.picture;

import frillbook.naming.Indexed;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The points of all drawn discs of one size at one angle.
 *
 * @param round from the centre of its disc
 * @param discs the points themselves
 */
public record RoundPoint(
    @Prefixed("round") Spot round, @Prefixed("disc") @Indexed(DrawnPieces.MOST) List<Spot> discs) {
  /** Sides of a drawn disc; a 20-gon covers 98.4 % of its circle. */
  private static final int SIDES = 20;

  /** Once round the first {@code drawn} of {@code centres}; the last point is the first again. */
  static List<RoundPoint> around(List<Spot> centres, double radius, int drawn) {
    return IntStream.rangeClosed(0, SIDES)
        .mapToDouble(i -> 2 * Math.PI / SIDES * i)
        .mapToObj(angle -> new Spot(radius * Math.cos(angle), radius * Math.sin(angle)))
        .map(round -> new RoundPoint(round, DrawnPieces.from(centres, drawn, round)))
        .toList();
  }
}
