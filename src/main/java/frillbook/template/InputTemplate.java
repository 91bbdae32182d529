package frillbook.template;

import frillbook.measure.Currencies;
import frillbook.measure.LengthUnit;
import frillbook.source.Position;
import java.math.BigDecimal;
import java.util.List;

/**
 * A cell that a person fills in.
 *
 * @param name in the workbook, in snake case
 * @param label what stands beside the cell
 * @param use what it matters to
 * @param kind what may be typed
 * @param unit as written in the template: {@code {unit}} for a length, {@code -} for none, the
 *     {@code {currency_code}} in it for money
 * @param prompt what the input is, in one or two sentences
 * @param inch its range in an inch workbook; 0 to 0 for a choice
 * @param cm its range in a cm workbook; the same as {@code inch} unless the kind is length
 * @param choices the words allowed; empty unless the kind is choice
 * @param preset the words it has until a person changes them; empty for a number
 * @param position where it is written
 */
public record InputTemplate(
    String name,
    String label,
    InputUse use,
    InputKind kind,
    String unit,
    String prompt,
    Range inch,
    Range cm,
    List<String> choices,
    PresetWords preset,
    Position position)
    implements RowTemplate {
  public InputTemplate {
    choices = List.copyOf(choices);
  }

  /** The longest text a person may type. */
  public static final int LONGEST_TEXT = 200;

  /** The numbers allowed in a workbook of that unit; 0 to 0 for a choice. */
  public Range range(LengthUnit unit) {
    return unit == LengthUnit.INCH ? inch : cm;
  }

  /** The value until a person changes it: a Double, or a String for words. */
  public Object preset(LengthUnit unit) {
    return isWords() ? preset.in(unit) : (Object) range(unit).preset();
  }

  /** Whether its value is a String. */
  public boolean isWords() {
    return switch (kind) {
      case CHOICE, CURRENCY, TEXT -> true;
      case LENGTH, NUMBER, PERCENT, COUNT -> false;
    };
  }

  /**
   * Whether {@code value} is a Double or String that the input may have; the words of a choice in
   * any case, as in a spreadsheet. A currency is in capital letters, since sentences and units say
   * it as it is.
   */
  public boolean accepts(Object value, LengthUnit unit) {
    if (kind == InputKind.CHOICE) {
      return value instanceof String word && choices.stream().anyMatch(word::equalsIgnoreCase);
    }
    if (kind == InputKind.CURRENCY) {
      return value instanceof String code && Currencies.has(code);
    }
    if (kind == InputKind.TEXT) {
      return value instanceof String text && text.length() <= LONGEST_TEXT;
    }
    return value instanceof Double number
        && range(unit).holds(number)
        && (kind != InputKind.COUNT || number == Math.rint(number));
  }

  /** What may be typed, as a sentence: "Finished diameter must be a number from 4 to 60 in." */
  public String refusal(LengthUnit unit) {
    return label + " must be " + allowed(unit) + ".";
  }

  private String allowed(LengthUnit lengthUnit) {
    Range range = range(lengthUnit);
    return switch (kind) {
      case LENGTH -> "a number" + span(range) + " " + lengthUnit.symbol();
      // Of money without the currency, which is not known where this is said.
      case NUMBER ->
          "a number" + span(range) + (unit.equals("-") || UnitText.isMoney(unit) ? "" : " " + unit);
      case PERCENT -> "a number from " + percent(range.from()) + " to " + percent(range.to());
      case COUNT -> "a whole number" + span(range);
      case TEXT -> "at most " + LONGEST_TEXT + " characters";
      case CURRENCY ->
          "the ISO 4217 code of money in use, in capital letters, such as " + Currencies.EXAMPLES;
      case CHOICE -> "one of: " + String.join(", ", choices);
    };
  }

  private static String span(Range range) {
    return " from " + plain(range.from()) + " to " + plain(range.to());
  }

  private static String percent(double fraction) {
    return BigDecimal.valueOf(fraction).movePointRight(2).stripTrailingZeros().toPlainString()
        + " %";
  }

  /** The same in every locale: 0.125, 4, 1500. */
  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
