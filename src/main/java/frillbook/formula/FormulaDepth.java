package frillbook.formula;

import frillbook.source.Mistakes;
import frillbook.source.Position;
import java.util.Optional;

/** How deep the brackets of a formula lie within each other. */
public final class FormulaDepth {
  /** Excel takes as many functions within functions. */
  static final int DEEPEST = 64;

  private FormulaDepth() {}

  /**
   * The bracket that lies deeper than a spreadsheet can follow, or the sign that has too many signs
   * before it.
   */
  public static Optional<FormulaToken> tooDeep(FormulaText formula) {
    int brackets = 0;
    int signs = 0;
    for (FormulaToken token : formula.tokens()) {
      if (token.kind() == FormulaToken.Kind.SPACE) {
        continue;
      }
      brackets += token.text().equals("(") ? 1 : token.text().equals(")") ? -1 : 0;
      signs = isSign(token) ? signs + 1 : 0;
      if (brackets > DEEPEST || signs > DEEPEST) {
        return Optional.of(token);
      }
    }
    return Optional.empty();
  }

  private static boolean isSign(FormulaToken token) {
    return token.text().equals("+") || token.text().equals("-");
  }

  public static void tell(Position at, Mistakes mistakes) {
    mistakes.add(
        at,
        "brackets or signs more than " + DEEPEST + " deep",
        "a formula that every spreadsheet can follow",
        "give an inner part a line of its own and use its name");
  }
}
