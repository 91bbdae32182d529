package frillbook.formula;

import frillbook.source.Mistakes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.FuncVarPtg;

/**
 * Asks the spreadsheet library whether a formula parses.
 *
 * <p>The library sees the formula with cell references in place of names, so that only grammar is
 * judged: brackets, operators, the number of a function's arguments.
 */
public final class FormulaGrammar {
  private static final Pattern ERROR_PLACE = Pattern.compile("(?s)Parse error near char (\\d+) .*");
  private static final Pattern ARGUMENTS =
      Pattern.compile("(?s)(Too (?:few|many) arguments to function '([^']+)').*");

  private final Predicate<String> isSeveralCells;

  /**
   * @param isSeveralCells whether a name stands for a whole column or block
   */
  public FormulaGrammar(Predicate<String> isSeveralCells) {
    this.isSeveralCells = isSeveralCells;
  }

  /** Whether {@code formula} parses; tells where it does not. */
  public boolean check(FormulaText formula, Mistakes mistakes) {
    Optional<FormulaToken> neighbour = operandBesideOperand(formula);
    if (neighbour.isPresent()) {
      tell(formula, neighbour.get(), "no operator before " + neighbour.get().text(), mistakes);
      return false;
    }
    return parse(formula, mistakes);
  }

  private boolean parse(FormulaText formula, Mistakes mistakes) {
    try {
      FormulaParser.parse(formula.render(this::standIn), null, FormulaType.CELL, -1);
      return true;
    } catch (FormulaParseException e) {
      String message = String.valueOf(e.getMessage());
      FormulaToken token = guilty(formula, message);
      tell(formula, token, found(token, message), mistakes);
      return false;
    }
  }

  private static void tell(
      FormulaText formula, FormulaToken token, String found, Mistakes mistakes) {
    mistakes.add(
        formula.position(token),
        found,
        "a formula that a spreadsheet can read",
        "check brackets, commas, operators and the function's arguments here");
  }

  /**
   * The second of two values with nothing but space between them. The library would take the space
   * for the intersection of two ranges.
   */
  private static Optional<FormulaToken> operandBesideOperand(FormulaText formula) {
    boolean valueBefore = false;
    for (FormulaToken token : formula.tokens()) {
      boolean begins =
          token.isOperand()
              || token.kind() == FormulaToken.Kind.FUNCTION
              || token.text().equals("(");
      if (valueBefore && begins) {
        return Optional.of(token);
      }
      if (token.kind() != FormulaToken.Kind.SPACE) {
        valueBefore = token.isOperand() || token.text().equals(")") || token.text().equals("%");
      }
    }
    return Optional.empty();
  }

  private String standIn(FormulaToken token) {
    return switch (token.kind()) {
      case NAME -> isSeveralCells.test(token.text()) ? "$A$1:$A$9" : "$A$1";
      case CELL -> "$A2";
      case CELL_ABOVE -> "SUM($A1)";
      case PLACEHOLDER -> "1";
      // The library wants a workbook to look for a function it does not know.
      case FUNCTION -> FuncVarPtg.isBuiltInFunctionName(token.text()) ? token.text() : "SUM";
      default -> token.text();
    };
  }

  private FormulaToken guilty(FormulaText formula, String message) {
    Matcher arguments = ARGUMENTS.matcher(message);
    if (arguments.matches()) {
      return formula
          .tokens(FormulaToken.Kind.FUNCTION)
          .filter(token -> token.text().equalsIgnoreCase(arguments.group(2)))
          .findFirst()
          .orElse(formula.tokens().get(0));
    }
    Matcher place = ERROR_PLACE.matcher(message);
    return tokenAt(formula, place.matches() ? Integer.parseInt(place.group(1)) : 0);
  }

  /** The token whose stand-in covers that character; the last one for a place past the end. */
  private FormulaToken tokenAt(FormulaText formula, int character) {
    List<FormulaToken> tokens = new ArrayList<>(formula.tokens());
    int end = 0;
    for (FormulaToken token : tokens) {
      end += standIn(token).length();
      if (character < end) {
        return token;
      }
    }
    return tokens.get(tokens.size() - 1);
  }

  private static String found(FormulaToken token, String message) {
    Matcher arguments = ARGUMENTS.matcher(message);
    return arguments.matches()
        ? arguments.group(1).replace("Too", "too").replace("'", "")
        : "a formula that does not parse near " + token.text();
  }
}
