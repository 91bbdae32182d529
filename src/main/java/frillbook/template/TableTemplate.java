package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import java.util.List;
import java.util.Optional;

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
    List<BlockTemplate> blocks,
    List<ColumnTemplate> columns,
    Position position)
    implements RowTemplate {
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
}
