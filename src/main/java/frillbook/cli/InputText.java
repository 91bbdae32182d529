package frillbook.cli;

import frillbook.measure.LengthText;
import frillbook.measure.LengthUnit;
import frillbook.source.Nearest;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.Phrases;
import frillbook.wording.CodeWord;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns what a person typed for an input into the value the workbook holds. */
final class InputText {
  private InputText() {}

  /**
   * A Double, or a String for words.
   *
   * @throws Refusal saying what was found, what is allowed and how it is written
   */
  static Object parse(InputTemplate input, String typed, LengthUnit unit, Phrases phrases) {
    return value(input, typed.strip(), unit)
        .filter(value -> input.accepts(value, unit))
        .orElseThrow(() -> new Refusal(Refusal.USAGE, refusal(input, typed, unit, phrases)));
  }

  private static Optional<Object> value(InputTemplate input, String typed, LengthUnit unit) {
    if (input.use().optional() && typed.isEmpty()) {
      return Optional.of(typed);
    }
    return switch (input.kind()) {
      case LENGTH -> LengthText.parse(typed, unit).map(Object.class::cast);
      case PERCENT -> percent(typed).map(Object.class::cast);
      case NUMBER -> times(input, typed).map(Object.class::cast);
      case COUNT -> number(typed).map(Object.class::cast);
      case CHOICE -> choice(input, typed).map(Object.class::cast);
      case CURRENCY -> Optional.of(CurrencyCode.capitals(typed));
      case TEXT -> Optional.of(typed);
    };
  }

  private static Optional<Double> percent(String typed) {
    return typed.endsWith("%")
        ? number(typed.substring(0, typed.length() - 1).strip()).map(share -> share / 100)
        : number(typed);
  }

  /** Twice as long is 2 times or 200%. */
  private static Optional<Double> times(InputTemplate input, String typed) {
    return input.unit().equals("times") ? percent(typed) : number(typed);
  }

  private static Optional<Double> number(String typed) {
    return typed.matches("-?(\\d+(\\.\\d+)?|\\.\\d+)")
        ? Optional.of(Double.parseDouble(typed))
        : Optional.empty();
  }

  private static Optional<String> choice(InputTemplate input, String typed) {
    return codes(input).filter(typed::equalsIgnoreCase).findFirst().or(() -> input.codeOf(typed));
  }

  /** What is told from one another outside a sheet. */
  static Stream<String> codes(InputTemplate input) {
    return input.choices().stream().map(CodeWord::code);
  }

  private static String refusal(
      InputTemplate input, String typed, LengthUnit unit, Phrases phrases) {
    String found = String.format(Locale.ROOT, "%s: found \"%s\"", input.name(), typed);
    return found
        + ". "
        + (input.kind() == InputKind.CHOICE
            ? oneOf(input, typed)
            : unit.say(input.refusal(phrases, unit)) + form(input.kind()));
  }

  private static String oneOf(InputTemplate input, String typed) {
    List<String> codes = codes(input).toList();
    List<String> all =
        Stream.concat(codes.stream(), input.choices().stream().flatMap(CodeWord::words)).toList();
    String near =
        Nearest.to(typed, all)
            .map(word -> " Did you mean " + input.codeOf(word).orElse(word) + "?")
            .orElse("");
    return "“" + input.label() + "” must be one of: " + String.join(", ", codes) + "." + near;
  }

  private static String form(InputKind kind) {
    return switch (kind) {
      case LENGTH -> " Write it like " + LengthText.EXAMPLES + ".";
      case PERCENT -> " Write it like 4% or 0.04.";
      case NUMBER -> " Write it like 2.5, with a decimal point.";
      case COUNT, CHOICE, CURRENCY, TEXT -> "";
    };
  }
}
