package frillbook.calculation;

import java.util.Optional;
import java.util.function.IntPredicate;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.CellReference;

/**
 * A formula as it reads in every row that it is filled down to: relative rows are counted from its
 * own, so that {@code IF($A7="","",B6)} in row 7 is {@code IF($A[0]="","",B[-1])}.
 */
public final class RowPattern {
  /** Of 1,048,576 rows. */
  private static final int MOST_DIGITS = 7;

  private final String formula;
  private final int row;
  private final StringBuilder pattern;

  private RowPattern(String formula, int row) {
    this.formula = formula;
    this.row = row;
    this.pattern = new StringBuilder(formula.length());
  }

  /**
   * The pattern of {@code formula}; nothing for one with cells of another sheet or with columns of
   * a table, which reads otherwise in every row.
   *
   * @param row of its cell, from 1
   */
  public static Optional<String> of(String formula, int row) {
    boolean staysApart = formula.indexOf('!') >= 0 || formula.indexOf('[') >= 0;
    return staysApart ? Optional.empty() : Optional.of(new RowPattern(formula, row).written());
  }

  private String written() {
    int end;
    for (int at = 0; at < formula.length(); at = end) {
      end = formula.charAt(at) == '"' ? quoted(at) : word(at);
      int digits = rowIn(at, end);
      if (digits < 0) {
        pattern.append(formula, at, end);
      } else {
        int away = Integer.parseInt(formula, digits, end, 10) - row;
        pattern.append(formula, at, digits).append('[').append(away).append(']');
      }
    }
    return pattern.toString();
  }

  /** Behind the next quotation mark. */
  private int quoted(int from) {
    int close = formula.indexOf('"', from + 1);
    return close < 0 ? formula.length() : close + 1;
  }

  /** Behind what may be a name, a number or a reference, or else behind one sign. */
  private int word(int from) {
    return Math.max(from + 1, behind(RowPattern::isOfWord, from, formula.length()));
  }

  private int behind(IntPredicate kind, int from, int end) {
    int at = from;
    while (at < end && kind.test(formula.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isOfWord(int c) {
    return isLetter(c) || isDigit(c) || c >= 'a' && c <= 'z' || c == '_' || c == '.' || c == '$';
  }

  private static boolean isLetter(int c) {
    return c >= 'A' && c <= 'Z';
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  /** Where the row begins in a reference whose row is not fixed; −1 in all else. */
  private int rowIn(int from, int end) {
    int letters = formula.charAt(from) == '$' ? from + 1 : from;
    int digits = behind(RowPattern::isLetter, letters, end);
    boolean isShaped =
        digits > letters
            && digits < end
            && end - digits <= MOST_DIGITS
            && behind(RowPattern::isDigit, digits, end) == end;
    // A function may end in digits too.
    boolean isFunction = end < formula.length() && formula.charAt(end) == '(';
    return isShaped && !isFunction && isOnSheet(letters, digits, end) ? digits : -1;
  }

  /** What lies beyond the last column or row is a name. */
  private boolean isOnSheet(int letters, int digits, int end) {
    return CellReference.cellReferenceIsWithinRange(
        formula.substring(letters, digits),
        formula.substring(digits, end),
        SpreadsheetVersion.EXCEL2007);
  }
}
