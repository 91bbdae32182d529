package frillbook.cli;

import frillbook.calculation.WorkbookValues;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The numbers of a plan that are nobody's but the maker's, and a search for them.
 *
 * <p>A number is looked for as it is, as a file holds it, to two and three places, and as per cent.
 * One with fewer than three figures, as 5 or 0.5, is left out: it may stand on the page for another
 * reason.
 */
record Secrets(Map<String, Double> numbers) {
  /** The maker's sheets; what these hold and the page does not show is secret. */
  private static final Set<String> SHEETS =
      Set.of("Money", "Habits and prices", "Shopping", "For the client");

  /** On the page for the client to read, in so many words: a name, or one row of its column. */
  private static final Set<String> SHOWN =
      Set.of(
          "price_each",
          "price_total",
          "deposit",
          "deposit_rate",
          "tax_rate",
          "choice_price_each",
          "choice_price_total",
          "choice_fullness",
          "valid_days",
          // At the rings planned: the prices of one cushion, and of choices two and three.
          "flatter_price 2",
          "same_price 2",
          "fuller_price 2");

  /** Figures of a number in a file. */
  private static final MathContext STORED = new MathContext(12);

  private static final Pattern NUMBER =
      Pattern.compile("\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d+(?:[.,]\\d+)?(?:[eE]-?\\d+)?");

  static Secrets of(Path plan) throws IOException {
    Map<String, Double> numbers = new LinkedHashMap<>();
    try (XSSFWorkbook workbook = Typed.open(plan)) {
      WorkbookValues values = new WorkbookValues(workbook);
      values.recalculate();
      for (String name : values.names()) {
        if (isSecret(name, values.where(name))) {
          add(numbers, name, values.column(name));
        }
      }
    }
    return new Secrets(numbers);
  }

  private static boolean isSecret(String name, String cell) {
    boolean makers = SHEETS.contains(cell.split("!")[0]) || name.startsWith("choice_");
    // A cell of a table is named by its column and its row.
    return makers && !SHOWN.contains(name.split("\\.")[0]);
  }

  private static void add(Map<String, Double> numbers, String name, List<Object> cells) {
    for (int row = 0; row < cells.size(); row++) {
      String at = name + " " + (row + 1);
      if (cells.get(row) instanceof Double number
          && isTelling(Math.abs(number))
          && !SHOWN.contains(at)) {
        numbers.put(at, Math.abs(number));
      }
    }
  }

  private static boolean isTelling(double number) {
    return rounded(number, 4).stripTrailingZeros().precision() >= 3;
  }

  /** Each secret that is said in {@code texts}, with its name; empty where none is. */
  Set<String> toldIn(List<String> texts) {
    Set<String> said =
        texts.stream()
            .flatMap(text -> NUMBER.matcher(text).results())
            .flatMap(match -> read(match.group()).map(Secrets::key))
            .collect(Collectors.toSet());
    Set<String> told = new TreeSet<>();
    numbers.forEach(
        (name, number) -> {
          if (forms(number).stream().anyMatch(said::contains)) {
            told.add(name + " = " + number);
          }
        });
    return told;
  }

  /** With a comma for decimals, or between thousands, or both: 1,482 may be either. */
  private static Stream<BigDecimal> read(String number) {
    Stream<String> either = Stream.of(number.replace(',', '.'), number.replace(",", ""));
    return either.filter(text -> text.matches("[^.]*\\.?[^.]*")).map(BigDecimal::new);
  }

  private static Set<String> forms(double number) {
    Set<String> forms = new TreeSet<>();
    for (double form : new double[] {number, number * 100}) {
      forms.add(key(rounded(form, 9)));
      forms.add(key(new BigDecimal(form, STORED)));
      for (int places : new int[] {2, 3}) {
        BigDecimal shown = rounded(form, places);
        if (shown.stripTrailingZeros().precision() >= 3) {
          forms.add(key(shown));
        }
      }
    }
    return forms;
  }

  private static BigDecimal rounded(double number, int places) {
    return BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP);
  }

  private static String key(BigDecimal number) {
    return number.setScale(9, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }
}
