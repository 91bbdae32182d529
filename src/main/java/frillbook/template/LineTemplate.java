package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.measure.Customary;
import frillbook.measure.LengthUnit;
import frillbook.source.Position;
import frillbook.wording.CodeFlag;
import frillbook.wording.CodeWord;
import frillbook.wording.MeasureStyle;
import frillbook.wording.Sentence;
import frillbook.wording.Wording;
import java.util.List;
import java.util.Optional;

/**
 * One calculated value with its label, unit and note.
 *
 * @param name in the workbook, in snake case
 * @param unit as written: {@code {unit}} for a length, {@code -} for none
 * @param formula gives the value; empty where {@code text} says it
 * @param words of its codes, the number of which the formula gives from 1; none unless the format
 *     is code
 * @param text what the line says, of format text; empty for a formula
 * @param flag the code of an input for which the line is 1; empty for a formula
 * @param guard name of the line that must be 1 for this one to be calculated; empty for always
 * @param also whether the other length unit stands beside it; beside a long length its long unit;
 *     of grams and metres, those of an inch workbook stand in the first place
 * @param headline whether it is one of the sheet's main results
 */
public record LineTemplate(
    String name,
    String label,
    String unit,
    ValueFormat format,
    FormulaText formula,
    List<CodeWord> words,
    Optional<WordingText> text,
    Optional<CodeFlag> flag,
    String note,
    Optional<String> guard,
    boolean also,
    boolean headline,
    Position position)
    implements RowTemplate {
  /** Codes of a line that says what all checks come to. */
  public static final List<String> VERDICTS = List.of("ready", "look_again", "stop");

  public LineTemplate {
    words = List.copyOf(words);
  }

  /** As it is shown where {@code quote} says. */
  public LineTemplate quoted(RowTemplate.Quote quote) {
    return new LineTemplate(
        name,
        quote.label().orElse(label),
        unit,
        format,
        quote.name(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        quote.note(),
        Optional.empty(),
        also,
        quote.headline(),
        quote.position());
  }

  /** Whether it says what all checks come to. */
  public boolean isVerdict() {
    return words.stream().map(CodeWord::code).toList().equals(VERDICTS);
  }

  /**
   * What it is shown in beside inches, the metric amount beside that; empty for what has no other
   * unit or is a length.
   */
  public Optional<Customary> customary() {
    return also ? Customary.of(unit) : Optional.empty();
  }

  /** Whether it is shown as on a tape: a length, or yards, of which a shop cuts eighths. */
  public boolean isOnTape(LengthUnit of) {
    return format.isLength() || of == LengthUnit.INCH && unit.equals("{long_unit}");
  }

  /** A long length with its long unit, which stands beside it in place of the other unit. */
  public Optional<Wording.Measure> longSaid() {
    return also && format == ValueFormat.LONG
        ? Optional.of(new Wording.Measure(name, MeasureStyle.LONG_TAPE))
        : Optional.empty();
  }

  /** What the line says; empty for one that is no words. */
  public Optional<Sentence> sentence() {
    return text.map(said -> new Sentence(said.wording(), guard));
  }
}
