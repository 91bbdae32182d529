package frillbook.wording;

import frillbook.measure.LengthUnit;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A sentence whose words follow the plan.
 *
 * @param parts said one after the other
 */
public record Wording(List<Part> parts) {
  /** Says nothing. */
  public static final Wording NOTHING = new Wording(List.of());

  public Wording {
    parts = List.copyOf(parts);
  }

  /** A piece of a sentence. */
  public sealed interface Part {}

  /** Words as they are, but for {@code {unit}} and {@code {long_unit}}. */
  public record Words(String text) implements Part {}

  /** The value of an input or line that is itself words. */
  public record Text(String name) implements Part {}

  /** The value of an input or line that is a number. */
  public record Number(String name, NumberStyle style) implements Part {}

  /**
   * One of several wordings, by the value of an input or line.
   *
   * @param cases tried in their order
   * @param other said where none of them holds
   */
  public record Choice(String name, List<Case> cases, Wording other) implements Part {
    public Choice {
      cases = List.copyOf(cases);
    }
  }

  /**
   * A wording for one value.
   *
   * @param value a Double, or words; "" is a text that was left blank
   */
  public record Case(Object value, Wording wording) {}

  /** The line that says how many places {@link NumberStyle#MONEY} has. */
  public static final String MONEY_PLACES = "money_places";

  /**
   * The sentence in words.
   *
   * @param value of an input or line by name, a Double or a String
   */
  public String say(Function<String, Object> value, LengthUnit unit) {
    return parts.stream().map(part -> say(part, value, unit)).collect(Collectors.joining());
  }

  private static String say(Part part, Function<String, Object> value, LengthUnit unit) {
    if (part instanceof Words words) {
      return unit.say(words.text());
    } else if (part instanceof Text text) {
      return value.apply(text.name()).toString();
    } else if (part instanceof Number number) {
      Object said = value.apply(number.name());
      return said instanceof Double each
          ? number.style().say(each, places(number.style(), value))
          : said.toString();
    }
    return chosen((Choice) part, value.apply(((Choice) part).name())).say(value, unit);
  }

  private static int places(NumberStyle style, Function<String, Object> value) {
    return style.money() ? ((Double) value.apply(MONEY_PLACES)).intValue() : 0;
  }

  /** Words in any case are the same, as in a spreadsheet. */
  private static boolean same(Object one, Object other) {
    return one instanceof String word && other instanceof String text
        ? word.equalsIgnoreCase(text)
        : one.equals(other);
  }

  private static Wording chosen(Choice choice, Object value) {
    return choice.cases().stream()
        .filter(each -> same(each.value(), value))
        .map(Case::wording)
        .findFirst()
        .orElse(choice.other());
  }
}
