package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import frillbook.wording.Sentence;
import java.util.Optional;

/**
 * One calculated value with its label, unit and note.
 *
 * @param name in the workbook, in snake case
 * @param unit as written: {@code {unit}} for a length, {@code -} for none
 * @param formula gives the value; empty where {@code text} says it
 * @param text what the line says, of format text; empty for a formula
 * @param guard name of the line that must be 1 for this one to be calculated; empty for always
 * @param also whether the other length unit stands beside it
 * @param headline whether it is one of the sheet's main results
 */
public record LineTemplate(
    String name,
    String label,
    String unit,
    ValueFormat format,
    FormulaText formula,
    Optional<WordingText> text,
    String note,
    Optional<String> guard,
    boolean also,
    boolean headline,
    Position position)
    implements RowTemplate {

  /** What the line says; empty for one that is no words. */
  public Optional<Sentence> sentence() {
    return text.map(said -> new Sentence(said.wording(), guard));
  }
}
