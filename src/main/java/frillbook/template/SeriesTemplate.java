package frillbook.template;

import frillbook.source.Position;
import java.util.stream.Stream;

/**
 * One run of points, row by row of two columns.
 *
 * @param x the column read across; of bars, the words beside them
 * @param y the column read upwards; of bars, their lengths
 * @param label for the key under the chart; empty for a series that is not in it
 */
public record SeriesTemplate(
    Column x, Column y, ChartLine line, ChartMarker marker, String label, Position position) {

  /** A column's name and where it is written. */
  public record Column(String name, Position position) {}

  public Stream<Column> columns() {
    return Stream.of(x, y);
  }
}
