package frillbook.reading;

import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.source.SourceText;
import frillbook.template.WordingText;
import frillbook.wording.MeasureStyle;
import frillbook.wording.NumberStyle;
import frillbook.wording.Wording;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a sentence in the notation of ICU's MessageFormat (Unicode), a part of it: {@code {name}},
 * {@code {name, number, 0.##}}, {@code {name, tape}}, {@code {name, plural, =0 {…} one {…} other {#
 * …}}} and {@code {name, select, word {…} other {…}}}.
 *
 * <p>In a select a choice goes by its code, {@code yes} and {@code no} stand for a flag that is 1
 * or 0, and {@code blank} for a text that was left empty.
 */
public final class WordingReader {
  /** Filled in when the workbook is made; they are words, not values. */
  private static final Set<String> UNITS = Set.of("unit", "long_unit");

  private static final Map<String, Object> FLAGS = Map.of("yes", 1.0, "no", 0.0, "blank", "");

  private static final Pattern KEY = Pattern.compile("\\s*(=\\d+|\\w+)\\s*\\{");

  private static final Pattern PLACES = Pattern.compile("0(?:\\.(0*)(#*))?(%?)");

  private final SourceText source;
  private final Mistakes mistakes;
  private final Map<String, Position> names = new LinkedHashMap<>();
  private int at;

  private WordingReader(SourceText source, Mistakes mistakes) {
    this.source = source;
    this.mistakes = mistakes;
  }

  /** What a person reads in place of {@code source}; what cannot be read is told and left out. */
  static WordingText read(SourceText source, Scope scope) {
    WordingText text = read(source, scope.mistakes());
    if (scope.texts().isNone() || !hasWords(text.wording())) {
      return text;
    }
    Optional<SourceText> twin = scope.texts().find(source, scope.mistakes());
    WordingText said = twin.map(found -> read(found, scope.mistakes())).orElse(text);
    twin.ifPresent(
        found ->
            Catalogue.tellOthers(names(source, text), names(found, said), found, scope.mistakes()));
    return said;
  }

  /** The values it speaks of, and the units. */
  private static Set<String> names(SourceText source, WordingText text) {
    Set<String> names = new HashSet<>(text.names().keySet());
    UNITS.stream().filter(Catalogue.names(source.value())::contains).forEach(names::add);
    return names;
  }

  private static boolean hasWords(Wording wording) {
    return wording.parts().stream().anyMatch(WordingReader::hasWords);
  }

  private static boolean hasWords(Wording.Part part) {
    if (part instanceof Wording.Choice choice) {
      return hasWords(choice.other())
          || choice.cases().stream().anyMatch(each -> hasWords(each.wording()));
    }
    return part instanceof Wording.Words words && Catalogue.hasWords(words.text());
  }

  /** What {@code source} says; what cannot be read is told and left out. */
  private static WordingText read(SourceText source, Mistakes mistakes) {
    WordingReader reader = new WordingReader(source, mistakes);
    List<Wording.Part> parts = new ArrayList<>(reader.parts(Optional.empty()));
    if (reader.at < source.value().length()) {
      reader.tell("a } that closes nothing", "as many { as }", "take it out");
      reader.at = source.value().length();
    }
    return new WordingText(new Wording(parts), source.position(), Map.copyOf(reader.names));
  }

  /**
   * Reads up to the brace that closes this wording, or to the end.
   *
   * @param counted the number that # stands for, that of the innermost plural around it
   */
  private List<Wording.Part> parts(Optional<String> counted) {
    List<Wording.Part> parts = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    while (at < source.value().length() && source.value().charAt(at) != '}') {
      char next = source.value().charAt(at);
      if (next == '#' && counted.isPresent()) {
        flush(words, parts);
        parts.add(new Wording.Number(counted.get(), NumberStyle.WHOLE));
        at++;
      } else if (next == '{' && !isUnit()) {
        flush(words, parts);
        argument(counted).ifPresent(parts::add);
      } else {
        words.append(next);
        at++;
        if (next == '{') {
          upTo('}', words);
        }
      }
    }
    flush(words, parts);
    return parts;
  }

  private static void flush(StringBuilder words, List<Wording.Part> parts) {
    if (!words.isEmpty()) {
      parts.add(new Wording.Words(words.toString()));
      words.setLength(0);
    }
  }

  private boolean isUnit() {
    int end = source.value().indexOf('}', at);
    return end > 0 && UNITS.contains(source.value().substring(at + 1, end));
  }

  private void upTo(char last, StringBuilder words) {
    int end = source.value().indexOf(last, at) + 1;
    words.append(source.value(), at, end);
    at = end;
  }

  /** {@code {name}} or {@code {name, kind, …}}; {@code at} stands on the opening brace. */
  private Optional<Wording.Part> argument(Optional<String> counted) {
    int start = at + 1;
    int nameEnd = endOf(start, ",}{");
    String name = source.value().substring(start, nameEnd).strip();
    names.putIfAbsent(name, source.at(start));
    at = nameEnd;
    if (!is(',')) {
      close();
      return Optional.of(new Wording.Text(name));
    }
    int kindEnd = endOf(at + 1, ",}{");
    String kind = source.value().substring(at + 1, kindEnd).strip();
    at = kindEnd;
    return switch (kind) {
      case "number" -> Optional.of(number(name));
      case "plural" -> Optional.of(choice(name, true, Optional.of(name)));
      case "select" -> Optional.of(choice(name, false, counted));
      default -> measure(name, kind);
    };
  }

  private Optional<Wording.Part> measure(String name, String kind) {
    Optional<MeasureStyle> style = MeasureStyle.of(kind);
    if (style.isEmpty()) {
      tell(
          "{" + name + ", " + kind + "}",
          "number, tape, long_tape, weight, plural or select behind the name",
          "write {" + name + "} or one of these");
      skip();
    } else {
      close();
    }
    return style.map(how -> new Wording.Measure(name, how));
  }

  private Wording.Part number(String name) {
    NumberStyle style = NumberStyle.WHOLE;
    if (is(',')) {
      int end = endOf(at + 1, "}{");
      style = style(source.value().substring(at + 1, end).strip());
      at = end;
    }
    close();
    return new Wording.Number(name, style);
  }

  private NumberStyle style(String pattern) {
    Matcher places = PLACES.matcher(pattern);
    if (pattern.equals("currency")) {
      names.putIfAbsent(Wording.MONEY_PLACES, source.at(at));
      return NumberStyle.MONEY;
    } else if (places.matches()) {
      int least = places.group(1) == null ? 0 : places.group(1).length();
      int more = places.group(2) == null ? 0 : places.group(2).length();
      return new NumberStyle(least, least + more, !places.group(3).isEmpty(), false);
    }
    tell("the number pattern " + pattern, "0, 0.##, 0.00, 0.#% or currency", "write one like them");
    return NumberStyle.WHOLE;
  }

  private Wording.Part choice(String name, boolean plural, Optional<String> counted) {
    List<Wording.Case> cases = new ArrayList<>();
    Wording other = Wording.NOTHING;
    boolean closed = false;
    at = is(',') ? at + 1 : at;
    Matcher key = KEY.matcher(source.value()).region(at, source.value().length());
    while (key.lookingAt()) {
      at = key.end();
      Wording wording = new Wording(parts(counted));
      close();
      if (key.group(1).equals("other")) {
        other = wording;
        closed = true;
      } else {
        cases.add(new Wording.Case(value(key.group(1), plural), wording));
      }
      key.region(at, source.value().length());
    }
    if (!closed) {
      tell("a choice by " + name + " without other", "what is said otherwise", "add other {…}");
    }
    close();
    return new Wording.Choice(name, cases, other);
  }

  private static Object value(String key, boolean plural) {
    if (key.startsWith("=")) {
      return Double.valueOf(key.substring(1));
    } else if (plural && key.equals("one")) {
      return 1.0;
    }
    return FLAGS.getOrDefault(key, key);
  }

  private boolean is(char expected) {
    return at < source.value().length() && source.value().charAt(at) == expected;
  }

  /** Where the first of {@code ends} stands; the end of the text where none does. */
  private int endOf(int from, String ends) {
    int end = from;
    while (end < source.value().length() && ends.indexOf(source.value().charAt(end)) < 0) {
      end++;
    }
    return end;
  }

  private void close() {
    while (at < source.value().length() && Character.isWhitespace(source.value().charAt(at))) {
      at++;
    }
    if (is('}')) {
      at++;
    } else {
      tell("a { that is not closed", "a } for every {", "add it");
      at = source.value().length();
    }
  }

  /** Leaves out what cannot be read, up to the brace that closes it. */
  private void skip() {
    int depth = 1;
    while (at < source.value().length() && depth > 0) {
      depth += is('{') ? 1 : is('}') ? -1 : 0;
      at++;
    }
  }

  private void tell(String found, String expected, String remedy) {
    mistakes.add(source.at(at), found, expected, remedy);
  }
}
