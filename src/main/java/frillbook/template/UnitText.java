package frillbook.template;

import frillbook.wording.Wording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The unit of an input, a line or a column as a wording; that of money follows the currency. */
public final class UnitText {
  /** The input that settles the currency. */
  public static final String CURRENCY = "currency_code";

  private static final String PLACEHOLDER = "{" + CURRENCY + "}";

  private UnitText() {}

  /** Whether {@code unit}, as written in a template, follows the currency. */
  public static boolean isMoney(String unit) {
    return unit.contains(PLACEHOLDER);
  }

  /** What {@code unit} says: nothing for {@code -}. */
  public static Wording of(String unit) {
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
