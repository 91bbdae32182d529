package frillbook.template;

import frillbook.formula.FormulaLexer;
import frillbook.formula.FormulaText;
import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.source.SourceText;
import java.util.Optional;

/**
 * What an input matters to.
 *
 * @param part of the work, one of those that {@code input_checks} lists
 * @param when it is used, by formula; empty for always
 * @param optional whether a number may be left out, its cell blank
 */
public record InputUse(String part, Optional<FormulaText> when, boolean optional) {
  /**
   * The same read back from its words.
   *
   * @param when as written in a template without mistakes
   */
  public static InputUse of(String part, Optional<String> when, boolean optional) {
    Position nowhere = new Position("", 1, 1);
    return new InputUse(
        part,
        when.map(text -> FormulaLexer.lex(SourceText.at(nowhere, text), new Mistakes())),
        optional);
  }
}
