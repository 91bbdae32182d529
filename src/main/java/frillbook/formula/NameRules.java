package frillbook.formula;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which words a spreadsheet takes as a defined name, and how ours are written. */
public final class NameRules {
  /** Excel's limit for a defined name. */
  private static final int LONGEST = 255;

  /** Excel's limit for a sheet's name. */
  private static final int LONGEST_SHEET = 31;

  private static final int LAST_COLUMN = 16_384;
  private static final int LAST_ROW = 1_048_576;

  private static final Pattern SNAKE_CASE = Pattern.compile("[a-z][a-z0-9]*(_[a-z0-9]+)*");
  private static final Pattern CELL = Pattern.compile("([a-z]{1,3})(\\d{1,7})");
  private static final Pattern ROW_COLUMN = Pattern.compile("r\\d*|c\\d*|r\\d*c\\d*");
  private static final Pattern SHEET_REFUSED = Pattern.compile("[\\\\/*?:\\[\\]]");

  /** Names that the compiler gives itself, or that mean something else. */
  static final Set<String> RESERVED =
      Set.of("check_fault", "check_sentence", "input_fault", "none", "true", "false");

  /** How the names of lengths in words begin. */
  private static final String SAID = "said_";

  private NameRules() {}

  /** Why {@code name} cannot be a defined name, or empty where it can. */
  public static Optional<String> objection(String name) {
    if (!SNAKE_CASE.matcher(name).matches()) {
      return Optional.of("is not in snake case");
    } else if (name.length() > LONGEST) {
      return Optional.of("is longer than " + LONGEST + " characters");
    } else if (isCell(name) || ROW_COLUMN.matcher(name).matches()) {
      return Optional.of("is a cell reference in a spreadsheet");
    } else if (RESERVED.contains(name) || name.startsWith(SAID)) {
      return Optional.of("is reserved");
    } else if (PortableFunctions.names().contains(name.toUpperCase(Locale.ROOT))) {
      return Optional.of("is the name of a function");
    }
    return Optional.empty();
  }

  /** Why {@code name} cannot be the name of a sheet, or empty where it can. */
  public static Optional<String> sheetObjection(String name) {
    if (name.isBlank()) {
      return Optional.of("is blank");
    } else if (name.length() > LONGEST_SHEET) {
      return Optional.of("is longer than " + LONGEST_SHEET + " characters");
    } else if (name.chars().anyMatch(Character::isISOControl)) {
      return Optional.of("holds a control character");
    } else if (SHEET_REFUSED.matcher(name).find()) {
      return Optional.of("holds one of \\ / * ? : [ ]");
    } else if (name.startsWith("'") || name.endsWith("'")) {
      return Optional.of("begins or ends with an apostrophe");
    } else if (name.equalsIgnoreCase("History")) {
      return Optional.of("is reserved by Excel");
    }
    return Optional.empty();
  }

  private static boolean isCell(String name) {
    Matcher cell = CELL.matcher(name);
    return cell.matches()
        && columnNumber(cell.group(1)) <= LAST_COLUMN
        && Integer.parseInt(cell.group(2)) <= LAST_ROW;
  }

  /** a is 1, z is 26, aa is 27. */
  private static int columnNumber(String letters) {
    return letters.chars().reduce(0, (number, letter) -> number * 26 + letter - 'a' + 1);
  }
}
