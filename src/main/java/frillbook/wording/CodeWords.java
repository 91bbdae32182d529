package frillbook.wording;

import frillbook.naming.NamedValues;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The words of everything that is known by a code.
 *
 * @param byName of an input, a line or a column
 */
public record CodeWords(Map<String, List<CodeWord>> byName) {
  /** Nothing is known by a code. */
  public static final CodeWords NONE = new CodeWords(Map.of());

  /** Whether the values of {@code name} are codes. */
  public boolean has(String name) {
    return byName.containsKey(name);
  }

  /** The code {@code code} of {@code name} with its word; empty for any other value. */
  Optional<CodeWord> of(String name, Object code) {
    return find(name, CodeWord::code, code);
  }

  private Optional<CodeWord> find(String name, Function<CodeWord, String> by, Object value) {
    return byName.getOrDefault(name, List.of()).stream()
        .filter(each -> by.apply(each).equals(value))
        .findFirst();
  }

  /** What a cell shows for the value {@code code} of {@code name}; any other value as it is. */
  public Object shown(String name, Object code) {
    return find(name, CodeWord::code, code).<Object>map(CodeWord::word).orElse(code);
  }

  /** The value of {@code name} for which a cell shows {@code word}; any other value as it is. */
  private Object known(String name, Object word) {
    return find(name, CodeWord::word, word).<Object>map(CodeWord::code).orElse(word);
  }

  /** The values of a plan as cells show them. */
  public NamedValues shown(NamedValues plan) {
    return with(plan, name -> code -> shown(name, code));
  }

  /** The same back from what cells show. */
  public NamedValues known(NamedValues shown) {
    return with(shown, name -> word -> known(name, word));
  }

  private NamedValues with(NamedValues plan, Function<String, UnaryOperator<Object>> change) {
    Map<String, Object> lines = new LinkedHashMap<>(plan.lines());
    Map<String, List<Object>> columns = new LinkedHashMap<>(plan.columns());
    for (String name : byName.keySet()) {
      lines.computeIfPresent(name, (of, value) -> change.apply(name).apply(value));
      columns.computeIfPresent(name, (of, all) -> all.stream().map(change.apply(name)).toList());
    }
    return new NamedValues(lines, columns);
  }
}
