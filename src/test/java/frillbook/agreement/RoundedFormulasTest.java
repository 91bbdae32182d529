package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;

/**
 * No formula leaves it to the program whether 1.005 is a half at two decimals, or 0.07 seven cents:
 * a simple program multiplies by 100 and rounds. So a number is multiplied first, settled, and
 * rounded to a whole one.
 */
final class RoundedFormulasTest {
  private static final Pattern ROUNDING = Pattern.compile("\\b(ROUND|ROUNDUP|ROUNDDOWN)\\(");

  /** At these a value is settled: counts, quotients and squares. */
  private static final Set<String> SETTLED = Set.of("0", "4", "6", "9");

  /** A place in a picture, moved off the half first. */
  private static final Pattern DRAWN = Pattern.compile(".*\\+0\\.000001,[34]", Pattern.DOTALL);

  /** The arguments of every rounding in a formula, an inner one also by itself. */
  private static List<String> roundings(String formula) {
    List<String> found = new ArrayList<>();
    Matcher call = ROUNDING.matcher(formula);
    while (call.find()) {
      found.add(call.group(1) + " " + formula.substring(call.end(), end(formula, call.end())));
    }
    return found;
  }

  /** Where the bracket that is open at {@code from} is closed. */
  private static int end(String formula, int from) {
    int open = 1;
    boolean quoted = false;
    int at = from;
    while (open > 0) {
      char letter = formula.charAt(at++);
      quoted ^= letter == '"';
      open += quoted ? 0 : letter == '(' ? 1 : letter == ')' ? -1 : 0;
    }
    return at - 1;
  }

  private static boolean isSafe(String rounding) {
    String digits = rounding.substring(rounding.lastIndexOf(',') + 1);
    return rounding.startsWith("ROUND ")
        ? SETTLED.contains(digits) || DRAWN.matcher(rounding).matches()
        : digits.equals("0");
  }

  @Test
  void numbersAreRoundedToWholeOnesAlone() {
    Set<String> unsafe = new TreeSet<>();
    int checked = 0;
    for (XSSFCell cell : Trials.workbook(Trials.CM).formulaCells()) {
      for (String rounding : roundings(cell.getCellFormula())) {
        checked++;
        if (!isSafe(rounding)) {
          unsafe.add(rounding);
        }
      }
    }
    assertEquals(Set.of(), unsafe);
    assertTrue(checked > 1000, checked + " roundings");
  }

  @Test
  void aRoundingThatDependsOnTheProgramWouldBeSeen() {
    String formula = "IF(ROUND(a,0)=1,\"(\"&ROUNDUP(ROUND(x,6),money_places),ROUND(b*(c+1),2))";
    List<String> found = roundings(formula);
    assertEquals(
        List.of("ROUND a,0", "ROUNDUP ROUND(x,6),money_places", "ROUND x,6", "ROUND b*(c+1),2"),
        found);
    assertEquals(List.of(true, false, true, false), found.stream().map(r -> isSafe(r)).toList());
  }
}
