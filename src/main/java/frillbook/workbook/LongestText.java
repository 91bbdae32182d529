package frillbook.workbook;

import frillbook.template.FormulaText;
import frillbook.template.FormulaToken;
import java.util.Iterator;
import java.util.List;

/**
 * Guesses the longest text a formula can give, so that its row has room for it.
 *
 * <p>Texts joined by {@code &} add up; of a function's arguments, such as the branches of IF, the
 * longest counts. For {@code IF(a=1,"one","three "&b)} that is "three " and room for a number.
 */
final class LongestText {
  /** Room for a number or a word whose length is not known. */
  private static final String SOME_VALUE = "00000000";

  /** Room for two lines of a person's own words. */
  private static final String SOME_WORDS = "A word or so. ".repeat(8);

  /** Room for the sentence of any check. */
  private static final String SOME_SENTENCE = "A word or so. ".repeat(10);

  private final Iterator<FormulaToken> tokens;

  private LongestText(List<FormulaToken> tokens) {
    this.tokens = tokens.iterator();
  }

  static String of(FormulaText formula) {
    return new LongestText(formula.tokens()).upToBracket();
  }

  /** Reads up to the closing bracket, or to the formula's end. */
  private String upToBracket() {
    String longest = "";
    StringBuilder argument = new StringBuilder();
    while (tokens.hasNext()) {
      FormulaToken token = tokens.next();
      if (token.text().equals(")")) {
        break;
      } else if (token.text().equals(",")) {
        longest = longer(longest, argument.toString());
        argument.setLength(0);
      } else {
        argument.append(part(token));
      }
    }
    return longer(longest, argument.toString());
  }

  private String part(FormulaToken token) {
    return switch (token.kind()) {
      case STRING -> token.text().substring(1, token.text().length() - 1);
      case NAME -> value(token.text());
      case SYMBOL -> token.text().equals("(") ? upToBracket() : "";
      default -> "";
    };
  }

  private static String value(String name) {
    if (name.equals("check_sentence")) {
      return SOME_SENTENCE;
    }
    return name.endsWith("_words") ? SOME_WORDS : SOME_VALUE;
  }

  private static String longer(String one, String two) {
    return one.length() >= two.length() ? one : two;
  }
}
