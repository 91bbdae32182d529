package frillbook.template;

import frillbook.wording.Wording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The unit of an input, a line or a column as a wording. That of money follows the currency; {@code
 * disc|discs} follows its number.
 */
public final class UnitText {
  /** The input that settles the currency. */
  public static final String CURRENCY = "currency_code";

  private static final String PLACEHOLDER = "{" + CURRENCY + "}";

  private static final String EITHER = "\\|";

  private UnitText() {}

  /** Whether {@code unit}, as written in a template, follows a value of the workbook. */
  public static boolean isCalculated(String unit) {
    return isMoney(unit) || unit.contains("|");
  }

  /** What {@code unit} says beside the value of {@code name}. */
  public static Wording beside(String name, String unit) {
    String[] either = unit.split(EITHER);
    if (either.length == 1) {
      return of(unit);
    }
    Wording.Case one = new Wording.Case(1.0, of(either[0]));
    return new Wording(List.of(new Wording.Choice(name, List.of(one), of(either[1]))));
  }

  /** {@code unit} for more than one. */
  public static String several(String unit) {
    return unit.substring(unit.indexOf('|') + 1);
  }

  /** Whether {@code unit}, as written in a template, follows the currency. */
  public static boolean isMoney(String unit) {
    return unit.contains(PLACEHOLDER);
  }

  /** What {@code written} says of more than one: nothing for {@code -}. */
  public static Wording of(String written) {
    String unit = several(written);
    List<Wording.Part> parts = new ArrayList<>();
    if (!unit.equals("-")) {
      Arrays.stream(unit.split("(?=\\{" + CURRENCY + "})|(?<=\\{" + CURRENCY + "})"))
          .map(UnitText::part)
          .forEach(parts::add);
    }
    return new Wording(parts);
  }

  private static Wording.Part part(String text) {
    return text.equals(PLACEHOLDER) ? new Wording.Text(CURRENCY) : new Wording.Words(text);
  }
}
