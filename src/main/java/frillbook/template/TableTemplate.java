package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import frillbook.source.SourceText;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Formulas in a fixed number of rows: filled down, or each row's own.
 *
 * @param name for people who read the template; no cell has it
 * @param heading a section band above the table, if any
 * @param rows how many there are
 * @param named the same by name; none where all rows have the same formulas
 * @param show condition for a row to show anything; empty for always
 * @param guard name of the line that must be 1 for the table to be calculated; empty for always
 * @param paper whether it is a copy for paper of what stands elsewhere; a printed plan leaves it
 *     out
 * @param rowHeight of its rows, in points; the usual one where it is empty
 * @param boxes to be ticked behind every row that is filled, if any
 * @param blocks names over several columns
 * @param columns from left to right; at least one
 */
public record TableTemplate(
    String name,
    Optional<String> heading,
    int rows,
    List<NamedRow> named,
    Optional<FormulaText> show,
    Optional<String> guard,
    boolean paper,
    OptionalDouble rowHeight,
    Optional<Boxes> boxes,
    List<BlockTemplate> blocks,
    List<ColumnTemplate> columns,
    Position position)
    implements RowTemplate {
  /**
   * Boxes to be ticked, one to a column of the sheet.
   *
   * @param label over them
   * @param most how many there are
   * @param count the input or line that says how many of them are used
   */
  public record Boxes(String label, int most, SourceText count) {}

  public TableTemplate {
    blocks = List.copyOf(blocks);
    columns = List.copyOf(columns);
    named = List.copyOf(named);
  }

  /** Which column, from 0, has that name; -1 for none. */
  public ColumnTemplate column(String name) {
    return columns.get(indexOf(name));
  }

  public int indexOf(String column) {
    List<String> names = columns.stream().map(ColumnTemplate::name).toList();
    return names.indexOf(column);
  }

  /** The column of the sheet where the column {@code index} of the table begins, both from 0. */
  public int place(int index) {
    return columns.subList(0, index).stream().mapToInt(ColumnTemplate::span).sum();
  }

  /** The same of the column with that name. */
  public int place(String column) {
    return place(indexOf(column));
  }

  /** Columns of the sheet that it takes. */
  public int width() {
    return place(columns.size()) + boxes.map(Boxes::most).orElse(0);
  }
}
