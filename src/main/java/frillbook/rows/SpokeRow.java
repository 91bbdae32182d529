package frillbook.rows;

import frillbook.measure.Rounding;
import frillbook.naming.Indexed;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Where one turn of the marked spiral crosses eight spokes: r(n, j) = r₀ + b(n − 1 + j/8).
 *
 * @param spokeTurn from 1
 * @param spokes in the direction of drawing; the eighth is the one the line begins on
 */
public record SpokeRow(int spokeTurn, @Prefixed("spoke") @Indexed(8) List<SpokeMark> spokes) {
  /** Turns that the printed page has room for. */
  static final int MOST = 14;

  private static final int SPOKES = 8;

  /**
   * @param mark distance from the centre, to the nearest mark of a rule; none past the line's end
   */
  public record SpokeMark(OptionalDouble mark) {}

  static SpokeRow of(int turn, double first, double spacing, double outer, int parts) {
    return new SpokeRow(
        turn,
        IntStream.rangeClosed(1, SPOKES)
            .mapToDouble(spoke -> first + spacing * (turn - 1 + spoke / (double) SPOKES))
            .mapToObj(radius -> mark(radius, outer, parts))
            .toList());
  }

  private static SpokeMark mark(double radius, double outer, int parts) {
    return new SpokeMark(
        Rounding.settle(radius - outer) > 0
            ? OptionalDouble.empty()
            : OptionalDouble.of(Math.floor(Rounding.settle(radius * parts) + .5) / parts));
  }
}
