package frillbook.picture;

import frillbook.naming.Indexed;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The points of all drawn discs of one size at one of their corners: once round, then to and fro at
 * 45° from corner to corner.
 *
 * @param round from the centre of its disc
 * @param discs the points themselves
 */
public record RoundPoint(
    @Prefixed("round") Spot round, @Prefixed("disc") @Indexed(DrawnPieces.MOST) List<Spot> discs) {
  /** Sides of a drawn disc; a 20-gon covers 98.4 % of its circle. */
  private static final int SIDES = 20;

  private static final List<Integer> ROUND = IntStream.rangeClosed(0, SIDES).boxed().toList();

  /** The corners of a hatch of six strokes, which begins where the way round ends. */
  private static final List<Integer> CLOSE = List.of(5, 6, -1, -2, 7, 8, -3, -4, 9, 10, -5);

  /** Those of three. */
  private static final List<Integer> WIDE = List.of(5, 7, -2, -4, 9);

  /** The first {@code drawn} of {@code centres}, closely hatched. */
  static List<RoundPoint> hatched(List<Spot> centres, double radius, int drawn) {
    return points(CLOSE, centres, radius, drawn, disc -> true);
  }

  /** The same, widely hatched where {@code hatched} holds for the disc's number, from 0. */
  static List<RoundPoint> some(List<Spot> centres, double radius, int drawn, IntPredicate hatched) {
    return points(WIDE, centres, radius, drawn, hatched);
  }

  private static List<RoundPoint> points(
      List<Integer> hatch, List<Spot> centres, double radius, int drawn, IntPredicate hatched) {
    Spot first = corner(0, radius);
    return IntStream.range(0, ROUND.size() + hatch.size())
        .mapToObj(
            row -> {
              boolean all = row < ROUND.size();
              Spot round = corner((all ? ROUND : hatch).get(row % ROUND.size()), radius);
              return new RoundPoint(
                  round,
                  DrawnPieces.from(
                      centres, drawn, disc -> all || hatched.test(disc) ? round : first));
            })
        .toList();
  }

  private static Spot corner(int number, double radius) {
    double angle = 2 * Math.PI / SIDES * number;
    return new Spot(radius * Math.cos(angle), radius * Math.sin(angle));
  }
}
