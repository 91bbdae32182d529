package frillbook.wording;

import frillbook.measure.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

  /** How the names of cells begin that have a value in words. */
  public static final String SAID = "said_";

  /** A piece of a sentence. */
  public sealed interface Part {}

  /** Words as they are, but for {@code {unit}} and {@code {long_unit}}. */
  public record Words(String text) implements Part {}

  /** The value of an input or line that is itself words. */
  public record Text(String name) implements Part {}

  /** The value of an input or line that is a number. */
  public record Number(String name, NumberStyle style) implements Part {}

  /** The value of an input or line that is a length or a weight. */
  public record Measure(String name, MeasureStyle style) implements Part {
    /** The name of the cell that has it in words; all sentences quote that. */
    public String cell() {
      return SAID + (isLong() ? "long_" : "") + name;
    }

    /** Whether its long unit is said with it. */
    public boolean isLong() {
      return style == MeasureStyle.LONG_TAPE;
    }

    /** The same without its long unit. */
    public Measure brief() {
      return isLong() ? new Measure(name, MeasureStyle.TAPE) : this;
    }

    /** What it says alone. */
    public Sentence sentence() {
      return new Sentence(new Wording(List.of(this)), Optional.empty());
    }
  }

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

    /** All it can become. */
    Stream<Wording> wordings() {
      return Stream.concat(cases.stream().map(Case::wording), Stream.of(other));
    }
  }

  /**
   * A wording for one value.
   *
   * @param value a Double, or a code; "" is a text that was left blank
   */
  public record Case(Object value, Wording wording) {
    /** The code it is for: yes and no are written for those of a choice as for a flag. */
    public String code() {
      return value.equals(1.0) ? "yes" : value.equals(0.0) ? "no" : value.toString();
    }
  }

  /** The line that says how many places {@link NumberStyle#MONEY} has. */
  public static final String MONEY_PLACES = "money_places";

  /**
   * The sentence in words.
   *
   * @param value of an input or line by name, a Double, a String or a {@link CodeWord}
   */
  public String say(Function<String, Object> value, LengthUnit unit) {
    return parts.stream().map(part -> say(part, value, unit)).collect(Collectors.joining());
  }

  private static String say(Part part, Function<String, Object> value, LengthUnit unit) {
    if (part instanceof Words words) {
      return unit.say(words.text());
    } else if (part instanceof Text text) {
      return words(value.apply(text.name()));
    } else if (part instanceof Number number) {
      Object said = value.apply(number.name());
      return said instanceof Double each
          ? number.style().say(each, places(number.style(), value))
          : words(said);
    }
    if (part instanceof Measure measure) {
      Object said = value.apply(measure.name());
      return said instanceof Double each ? measure.style().say(unit, each) : words(said);
    }
    return chosen((Choice) part, value.apply(((Choice) part).name())).say(value, unit);
  }

  private static String words(Object value) {
    return value instanceof CodeWord coded ? coded.word() : value.toString();
  }

  private static int places(NumberStyle style, Function<String, Object> value) {
    return style.money() ? ((Double) value.apply(MONEY_PLACES)).intValue() : 0;
  }

  /** Every length and weight it may say. */
  public Stream<Measure> measures() {
    return parts.stream().flatMap(Wording::measures);
  }

  private static Stream<Measure> measures(Part part) {
    if (part instanceof Choice choice) {
      return choice.wordings().flatMap(Wording::measures);
    }
    return part instanceof Measure measure ? Stream.of(measure) : Stream.empty();
  }

  /**
   * What {@code found} finds in words that are said in every case in which anything is said: the
   * same in all of them.
   */
  public Optional<String> alwaysSaid(Function<String, Optional<String>> found) {
    return parts.stream().flatMap(part -> alwaysSaid(part, found).stream()).findFirst();
  }

  private static Optional<String> alwaysSaid(Part part, Function<String, Optional<String>> found) {
    if (part instanceof Choice choice) {
      List<Optional<String>> each =
          choice
              .wordings()
              .filter(wording -> !wording.parts().isEmpty())
              .map(wording -> wording.alwaysSaid(found))
              .distinct()
              .toList();
      return each.size() == 1 ? each.get(0) : Optional.empty();
    }
    return part instanceof Words words ? found.apply(words.text()) : Optional.empty();
  }

  private static boolean isFor(Case each, Object value) {
    return value instanceof CodeWord coded
        ? each.code().equals(coded.code())
        : each.value().equals(value);
  }

  private static Wording chosen(Choice choice, Object value) {
    return choice.cases().stream()
        .filter(each -> isFor(each, value))
        .map(Case::wording)
        .findFirst()
        .orElse(choice.other());
  }
}
