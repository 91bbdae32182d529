package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import frillbook.wording.CodeWord;
import java.util.List;
import java.util.Optional;

/**
 * A column of a table: one formula for all its rows, or one for each.
 *
 * @param name in the workbook: the column's data cells
 * @param unit as written: {@code {unit}} for a length, {@code -} for none
 * @param words of its codes, the number of which the formula gives from 1; none unless the format
 *     is code
 * @param formulas one for all rows, or one for each
 * @param text a sentence in place of a formula; its names may be columns of the same row
 * @param size of its letters
 * @param span columns of the sheet it takes
 * @param guard name of the line that must be 1 for this column to be calculated, beside that of its
 *     table; empty for none
 */
public record ColumnTemplate(
    String name,
    String label,
    String unit,
    ValueFormat format,
    List<FormulaText> formulas,
    Optional<WordingText> text,
    List<CodeWord> words,
    String note,
    Size size,
    int span,
    Optional<String> guard,
    Position position) {
  /** How large the values stand, to be read at a desk, or at a machine from a step away. */
  public enum Size {
    USUAL,
    LARGE,
    LARGEST
  }

  public ColumnTemplate {
    words = List.copyOf(words);
    formulas = List.copyOf(formulas);
  }

  /** The formula of row {@code number}, from 1. */
  public FormulaText formula(int number) {
    return formulas.get(byRow() ? number - 1 : 0);
  }

  /** The same, one column of the sheet wide. */
  public ColumnTemplate single() {
    return new ColumnTemplate(
        name, label, unit, format, formulas, text, words, note, size, 1, guard, position);
  }

  /** Whether every row has a formula of its own. */
  public boolean byRow() {
    return formulas.size() > 1;
  }

  /** Whether every row says a word of its own, in their order. */
  public boolean namesRows() {
    return formulas.isEmpty();
  }
}
