package frillbook.formula;

import frillbook.source.Position;
import frillbook.source.SourceText;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A formula as written in a template, in pieces.
 *
 * <p>It has no leading equals sign. Names stand for cells of the workbook, {@code [column]} for the
 * cell of that column in the same row, {@code [column^]} for the one above it.
 */
public final class FormulaText {
  /** Stands where a text says what the value is. */
  public static final FormulaText NONE =
      new FormulaText(SourceText.at(new Position("", 1, 1), ""), List.of());

  /** A formula that is one name. */
  public static FormulaText name(SourceText name) {
    return new FormulaText(
        name, List.of(new FormulaToken(FormulaToken.Kind.NAME, name.value(), 0)));
  }

  private final SourceText source;
  private final List<FormulaToken> tokens;

  FormulaText(SourceText source, List<FormulaToken> tokens) {
    this.source = source;
    this.tokens = List.copyOf(tokens);
  }

  /** The pieces in order, white space among them; joined they give the formula. */
  public List<FormulaToken> tokens() {
    return tokens;
  }

  /** The formula with every piece replaced by what {@code translation} makes of it. */
  public String render(Function<FormulaToken, String> translation) {
    return tokens.stream().map(translation).collect(Collectors.joining());
  }

  /** The same with other words between its quotation marks. */
  public FormulaText withTexts(UnaryOperator<SourceText> change) {
    return new FormulaText(source, tokens.stream().map(token -> withText(token, change)).toList());
  }

  private FormulaToken withText(FormulaToken token, UnaryOperator<SourceText> change) {
    if (token.kind() != FormulaToken.Kind.STRING) {
      return token;
    }
    String text = token.text().substring(1, token.text().length() - 1).replace("\"\"", "\"");
    String changed = change.apply(SourceText.at(position(token), text)).value();
    return new FormulaToken(
        token.kind(), '"' + changed.replace("\"", "\"\"") + '"', token.offset());
  }

  /** Where the formula begins. */
  public Position position() {
    return source.position();
  }

  /** Where a piece of it is written. */
  public Position position(FormulaToken token) {
    return source.at(token.offset());
  }

  Stream<FormulaToken> tokens(FormulaToken.Kind kind) {
    return tokens.stream().filter(token -> token.kind() == kind);
  }

  /** As written. */
  @Override
  public String toString() {
    return source.value();
  }
}
