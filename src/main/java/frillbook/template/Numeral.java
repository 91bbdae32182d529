package frillbook.template;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes out {@code NUMERAL(x,2)}, a number as a sentence says it: rounded half up at up to three
 * decimals, without needless zeros.
 *
 * <p>A number that is simply joined to a text is written by each program in its own way; one gives
 * 33.130000000000000001 for 33.13. FIXED gives as many decimals as it is told, and so it is told
 * how many are not 0.
 */
final class Numeral {
  static final String FUNCTION = "NUMERAL";

  private static final List<String> PLACES = List.of("1", "2", "3");
  private static final List<String> PARTS = List.of("1", "10", "100", "1000");

  /** Pieces of a numeral up to its closing bracket, if its number is one piece. */
  private static final int MARKS = 5;

  private final List<FormulaToken> tokens;

  private Numeral(List<FormulaToken> tokens) {
    this.tokens = tokens;
  }

  /** The same pieces with every numeral written out; one without its decimals is left as it is. */
  static List<FormulaToken> writtenOut(List<FormulaToken> tokens) {
    return new Numeral(tokens).writtenOut();
  }

  private List<FormulaToken> writtenOut() {
    List<FormulaToken> written = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      int end = isNumeral(at) ? end(at + 2) : -1;
      int places = end < at + MARKS ? 0 : places(end);
      if (places > 0) {
        add(written, tokens.subList(at + 2, end - 2), places);
        at = end + 1;
      } else {
        written.add(tokens.get(at++));
      }
    }
    return written;
  }

  private boolean isNumeral(int at) {
    FormulaToken token = tokens.get(at);
    return token.kind() == FormulaToken.Kind.FUNCTION && token.text().equals(FUNCTION);
  }

  /** Where the bracket is closed within which {@code from} stands; −1 where it is not. */
  private int end(int from) {
    int open = 1;
    for (int at = from; at < tokens.size(); at++) {
      String text = tokens.get(at).text();
      open += text.equals("(") ? 1 : text.equals(")") ? -1 : 0;
      if (open == 0) {
        return at;
      }
    }
    return -1;
  }

  /** The decimals named before the closing bracket; 0 where none are. */
  private int places(int end) {
    boolean named = tokens.get(end - 2).text().equals(",");
    return named ? 1 + PLACES.indexOf(tokens.get(end - 1).text()) : 0;
  }

  private static void add(List<FormulaToken> written, List<FormulaToken> number, int places) {
    int offset = number.get(0).offset();
    List<FormulaToken> parts = new ArrayList<>();
    parts.addAll(FormulaLexer.pieces("ROUND(ROUND((", offset));
    parts.addAll(number);
    parts.addAll(FormulaLexer.pieces(")*" + PARTS.get(places) + ",4),0)", offset));
    written.addAll(FormulaLexer.pieces("FIXED(", offset));
    written.addAll(parts);
    written.addAll(FormulaLexer.pieces("/" + PARTS.get(places) + "," + places, offset));
    for (String zeros : PARTS.subList(1, places + 1)) {
      written.addAll(FormulaLexer.pieces("-(MOD(", offset));
      written.addAll(parts);
      written.addAll(FormulaLexer.pieces("," + zeros + ")=0)", offset));
    }
    written.addAll(FormulaLexer.pieces(",TRUE)", offset));
  }
}
