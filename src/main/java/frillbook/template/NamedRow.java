package frillbook.template;

import frillbook.source.Position;

/**
 * A row of a table that has a name and formulas of its own. The cell of its column {@code
 * task_minutes} is {@code task_minutes.gather} where the row is {@code gather}.
 */
public record NamedRow(String name, Position position) {

  /** The name of this row's cell in {@code column}. */
  public String cell(ColumnTemplate column) {
    return column.name() + "." + name;
  }

  /** The column that the cell {@code name} stands in; {@code name} itself where it is no cell's. */
  public static String column(String name) {
    int point = name.indexOf('.');
    return point < 0 ? name : name.substring(0, point);
  }
}
