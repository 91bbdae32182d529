package frillbook.template;

import frillbook.source.Position;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One run of points, row by row of two columns; of petals, of one.
 *
 * @param x the column read across; of bars, the words beside them; of petals, none
 * @param y the column read upwards; of bars, their lengths; of petals, how far out they reach
 * @param label for the key under the chart; empty for a series that is not in it
 * @param petal how petals are filled and turned; none for other charts
 */
public record SeriesTemplate(
    Optional<Column> x,
    Column y,
    ChartLine line,
    ChartMarker marker,
    String label,
    Optional<Petal> petal,
    Position position) {

  /** A column's name and where it is written. */
  public record Column(String name, Position position) {}

  /**
   * A filled shape about a centre.
   *
   * @param fill how much it covers what is under it, from 0 to 1
   * @param turn rows of the column before its first point: the shape is turned by so many steps
   */
  public record Petal(double fill, int turn) {}

  public Stream<Column> columns() {
    return Stream.concat(x.stream(), Stream.of(y));
  }

  /** Rows of its columns before its first point. */
  public int turn() {
    return petal.map(Petal::turn).orElse(0);
  }
}
