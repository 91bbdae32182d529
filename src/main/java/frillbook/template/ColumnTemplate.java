package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import frillbook.wording.CodeWord;
import java.util.List;
import java.util.Optional;

/**
 * A column of a table; one formula for all its rows.
 *
 * @param name in the workbook: the column's data cells
 * @param unit as written: {@code {unit}} for a length, {@code -} for none
 * @param words of its codes, the number of which the formula gives from 1; none unless the format
 *     is code
 * @param guard name of the line that must be 1 for this column to be calculated, beside that of its
 *     table; empty for none
 */
public record ColumnTemplate(
    String name,
    String label,
    String unit,
    ValueFormat format,
    FormulaText formula,
    List<CodeWord> words,
    String note,
    Optional<String> guard,
    Position position) {
  public ColumnTemplate {
    words = List.copyOf(words);
  }
}
