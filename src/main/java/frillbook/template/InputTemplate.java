package frillbook.template;

import frillbook.measure.Currencies;
import frillbook.measure.Customary;
import frillbook.measure.LengthUnit;
import frillbook.measure.Tape;
import frillbook.source.Position;
import frillbook.wording.CodeWord;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A cell that a person fills in.
 *
 * @param name in the workbook, in snake case
 * @param was what else a person may call it: names it had before, and names that others use
 * @param label what stands beside the cell
 * @param use what it matters to
 * @param kind what may be typed
 * @param unit as written in the template: {@code {unit}} for a length, {@code -} for none, the
 *     {@code {currency_code}} in it for money
 * @param prompt what the input is, in one or two sentences
 * @param inch its range in an inch workbook; 0 to 0 for a choice
 * @param cm its range in a cm workbook; the same as {@code inch} unless the template tells two
 * @param choices the codes allowed, with their words; empty unless the kind is choice
 * @param preset the code or the words it has until a person changes it; empty for a number
 * @param position where it is written
 */
public record InputTemplate(
    String name,
    List<String> was,
    String label,
    InputUse use,
    InputKind kind,
    String unit,
    String prompt,
    Range inch,
    Range cm,
    List<CodeWord> choices,
    PresetWords preset,
    Position position)
    implements RowTemplate {
  public InputTemplate {
    was = List.copyOf(was);
    choices = List.copyOf(choices);
  }

  private static final String BLANK = "";

  /** The longest text a person may type. */
  public static final int LONGEST_TEXT = 200;

  /** The numbers allowed in a workbook of that unit; 0 to 0 for a choice. */
  public Range range(LengthUnit unit) {
    return unit == LengthUnit.INCH ? inch : cm;
  }

  /** The unit shown beside the cell in a workbook of that unit; empty for none. */
  public Optional<Customary> customary(LengthUnit unit) {
    return unit == LengthUnit.INCH ? Customary.of(this.unit) : Optional.empty();
  }

  /** The value until a person changes it: a Double, or a String for words and for nothing. */
  public Object preset(LengthUnit unit) {
    boolean blank = Double.isNaN(range(unit).preset());
    return isWords() || blank ? preset.in(unit) : (Object) range(unit).preset();
  }

  /** Whether its value is a String. */
  public boolean isWords() {
    return switch (kind) {
      case CHOICE, CURRENCY, TEXT -> true;
      case LENGTH, NUMBER, PERCENT, COUNT -> false;
    };
  }

  /** Whether a person's own words are asked for, as long as they like. */
  public boolean isFree() {
    return kind == InputKind.TEXT;
  }

  /**
   * Whether {@code value} is a Double or String that the input may have: of a choice its code, of a
   * number that may be left out "". A currency is in capital letters, since sentences and units say
   * it as it is.
   */
  public boolean accepts(Object value, LengthUnit unit) {
    if (kind == InputKind.CHOICE) {
      return choices.stream().anyMatch(choice -> choice.code().equals(value));
    }
    if (kind == InputKind.CURRENCY) {
      return value instanceof String code && Currencies.has(code);
    }
    if (kind == InputKind.TEXT) {
      return value instanceof String text && text.length() <= LONGEST_TEXT;
    }
    if (use.optional() && BLANK.equals(value)) {
      return true;
    }
    return value instanceof Double number
        && range(unit).holds(number)
        && (kind != InputKind.COUNT || number == Math.rint(number));
  }

  /**
   * The code that a cell with {@code word} in it stands for, of whatever version of the words; in
   * any case, as in a spreadsheet, and with hyphens for blanks. Empty where it is no word of a
   * choice.
   */
  public Optional<String> codeOf(String word) {
    String plain = plain(word);
    return choices.stream()
        .filter(choice -> choice.words().map(InputTemplate::plain).anyMatch(plain::equals))
        .map(CodeWord::code)
        .findFirst();
  }

  /** What may be typed, as a sentence: "Finished diameter must be a number from 4 to 60 in." */
  public String refusal(Phrases phrases, LengthUnit lengthUnit) {
    return phrases.say(Phrase.OF_INPUT, label, limits(phrases, lengthUnit));
  }

  /** What may be typed, said beside it: "must be a number from 4 to 60 in". */
  public String limits(Phrases phrases, LengthUnit lengthUnit) {
    String from = said(lengthUnit, range(lengthUnit).from());
    String to = said(lengthUnit, range(lengthUnit).to());
    return switch (kind) {
      case LENGTH -> phrases.say(Phrase.A_NUMBER, from, to, lengthUnit.symbol());
      case NUMBER ->
          // Of money without the currency, which is not known where this is said.
          unit.equals("-") || UnitText.isMoney(unit)
              ? phrases.say(Phrase.A_BARE_NUMBER, from, to)
              : phrases.say(Phrase.A_NUMBER, from, to, UnitText.several(unit));
      case PERCENT -> phrases.say(Phrase.A_BARE_NUMBER, percent(inch.from()), percent(inch.to()));
      case COUNT -> phrases.say(Phrase.A_COUNT, from, to);
      case TEXT -> phrases.say(Phrase.A_TEXT, String.valueOf(LONGEST_TEXT));
      case CURRENCY -> phrases.say(Phrase.A_CURRENCY);
      case CHOICE ->
          phrases.say(
              Phrase.A_CHOICE,
              choices.stream().map(CodeWord::word).collect(Collectors.joining(", ")));
    };
  }

  private static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replaceAll("[-_\\s]+", " ");
  }

  private static String percent(double fraction) {
    return BigDecimal.valueOf(fraction).movePointRight(2).stripTrailingZeros().toPlainString()
        + "%";
  }

  /** A value that it might have, as messages tell it: 1/8, 4, 1500; the same in every locale. */
  public String said(LengthUnit lengthUnit, double number) {
    return kind == InputKind.LENGTH ? Tape.sayExactly(lengthUnit, number) : plain(number);
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
