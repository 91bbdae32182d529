package frillbook.formula;

import frillbook.source.Mistakes;
import frillbook.source.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts a formula into its pieces. */
public final class FormulaLexer {
  /** One named group for each kind of piece, tried in this order. */
  private static final Pattern PIECE =
      Pattern.compile(
          "(?<string>\"(?:[^\"]|\"\")*+\")"
              + "|(?<quoted>“[^“”\"]*”|”[^“”\"]*”|„[^“”\"]*[“”]|«[^«»\"]*»|‘[^‘’\"]*’|'[^'\"]*')"
              + "|(?<number>(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)"
              + "|(?<function>[A-Za-z_][A-Za-z0-9_.]*(?=\\())"
              + "|(?<logical>(?:TRUE|FALSE)\\b)"
              + "|(?<name>[A-Za-z_][A-Za-z0-9_.]*)"
              + "|(?<above>\\[\\w+\\^])"
              + "|(?<cell>\\[\\w+])"
              + "|(?<placeholder>\\{\\w+})"
              + "|(?<symbol><=|>=|<>|[-+*/^&=<>(),:%])"
              + "|(?<space>\\s+)");

  private FormulaLexer() {}

  /** The formula's pieces; what cannot be a piece is told and left out. */
  public static FormulaText lex(SourceText source, Mistakes mistakes) {
    List<FormulaToken> tokens = new ArrayList<>();
    Matcher piece = PIECE.matcher(source.value());
    int at = 0;
    while (at < source.value().length()) {
      piece.region(at, source.value().length());
      if (!piece.lookingAt()) {
        Lookalikes.stray(source, at, tokens, mistakes);
        at += Character.charCount(source.value().codePointAt(at));
      } else if (piece.group("quoted") != null) {
        tokens.add(Lookalikes.quoted(source, at, piece.group(), mistakes));
        at = piece.end();
      } else {
        tokens.add(new FormulaToken(kind(piece), piece.group(), at));
        at = piece.end();
      }
    }
    tellEqualsSign(source, tokens, mistakes);
    return new FormulaText(source, tokens);
  }

  private static FormulaToken.Kind kind(Matcher piece) {
    if (piece.group("string") != null) {
      return FormulaToken.Kind.STRING;
    } else if (piece.group("number") != null) {
      return FormulaToken.Kind.NUMBER;
    } else if (piece.group("function") != null) {
      return FormulaToken.Kind.FUNCTION;
    } else if (piece.group("logical") != null) {
      return FormulaToken.Kind.LOGICAL;
    } else if (piece.group("name") != null) {
      return FormulaToken.Kind.NAME;
    } else if (piece.group("above") != null) {
      return FormulaToken.Kind.CELL_ABOVE;
    } else if (piece.group("cell") != null) {
      return FormulaToken.Kind.CELL;
    } else if (piece.group("placeholder") != null) {
      return FormulaToken.Kind.PLACEHOLDER;
    }
    return piece.group("symbol") != null ? FormulaToken.Kind.SYMBOL : FormulaToken.Kind.SPACE;
  }

  private static void tellEqualsSign(
      SourceText source, List<FormulaToken> tokens, Mistakes mistakes) {
    if (!tokens.isEmpty() && tokens.get(0).text().equals("=")) {
      mistakes.add(
          source.at(0), "a formula beginning with =", "the formula alone", "leave out the = sign");
    }
  }
}
