package frillbook.formula;

import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.source.SourceText;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What people type, or their word processor puts, in place of what a formula is written with.
 *
 * <p>It is read as what it was meant for, so that nothing but itself is told.
 */
final class Lookalikes {
  private static final Map<String, String> MEANT =
      Map.ofEntries(
          Map.entry(";", ","),
          Map.entry("−", "-"),
          Map.entry("–", "-"),
          Map.entry("×", "*"),
          Map.entry("·", "*"),
          Map.entry("÷", "/"),
          Map.entry("≤", "<="),
          Map.entry("≥", ">="),
          Map.entry("≠", "<>"));

  private static final String SPACE = "\u00a0";

  private static final String PIECES =
      "names, [columns], numbers, \"texts\", functions and operators";

  private Lookalikes() {}

  /** Tells of a character that is no piece of a formula; adds the piece it was meant for. */
  static void stray(SourceText source, int at, List<FormulaToken> tokens, Mistakes mistakes) {
    String stray = Character.toString(source.value().codePointAt(at));
    Optional<String> meant = Optional.ofNullable(MEANT.get(stray));
    meant.ifPresent(symbol -> tokens.add(new FormulaToken(FormulaToken.Kind.SYMBOL, symbol, at)));
    Position place = source.at(at);
    if (stray.equals("\"")) {
      tell(mistakes, place, "a text without its closing quotation mark", "add the closing mark");
    } else if (stray.equals(";")) {
      mistakes.add(
          place, "the character ;", "a comma between arguments", "write a comma in its place");
    } else if (stray.equals(SPACE)) {
      tell(mistakes, place, "a space that is not a plain one", "type the space anew");
    } else {
      Optional<String> remedy = meant.map(symbol -> "write " + symbol + " in its place");
      tell(mistakes, place, "the character " + stray, remedy.orElse("take it out of the formula"));
    }
  }

  private static void tell(Mistakes mistakes, Position at, String found, String remedy) {
    mistakes.add(at, found, PIECES, remedy);
  }

  /** Tells of a text in quotation marks of another kind; gives it in those of a formula. */
  static FormulaToken quoted(SourceText source, int at, String quoted, Mistakes mistakes) {
    String text = "\"" + quoted.substring(1, quoted.length() - 1) + "\"";
    mistakes.add(
        source.at(at), "the quotation marks of " + quoted, "straight double ones", "write " + text);
    return new FormulaToken(FormulaToken.Kind.STRING, text, at);
  }
}
