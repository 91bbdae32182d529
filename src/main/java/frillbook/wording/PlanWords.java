package frillbook.wording;

import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** What sentences say of one plan: the words its workbook shows. */
public final class PlanWords {
  private final CodeWords words;
  private final LengthUnit unit;
  private final Map<String, Object> values = new HashMap<>();
  private final Map<String, List<Object>> columns;
  private final Map<String, List<Object>> shown;

  /**
   * @param inputs every input by name; null for a cell that was emptied
   * @param plan the values that follow from them; a sentence it has already is not said anew
   */
  public PlanWords(
      Vocabulary vocabulary, LengthUnit unit, Map<String, Object> inputs, NamedValues plan) {
    this.words = vocabulary.words();
    this.unit = unit;
    inputs.forEach((name, value) -> values.put(name, value == null ? "" : value));
    vocabulary.flags().forEach((name, flag) -> values.put(name, flag.of(values.get(flag.input()))));
    values.putAll(plan.lines());
    for (Map.Entry<String, Sentence> text : vocabulary.texts().entrySet()) {
      if (!values.containsKey(text.getKey())) {
        values.put(text.getKey(), say(text.getValue()));
      }
    }
    columns = new LinkedHashMap<>(plan.columns());
    vocabulary.columns().forEach((name, each) -> columns.computeIfAbsent(name, of -> say(each)));
    shown = words.shown(new NamedValues(Map.of(), columns)).columns();
  }

  /** {@code plan} with the sentences that are said of it and the flags of its inputs. */
  public static NamedValues complete(
      Vocabulary vocabulary, LengthUnit unit, Map<String, Object> inputs, NamedValues plan) {
    PlanWords words = new PlanWords(vocabulary, unit, inputs, plan);
    Map<String, Object> lines = new LinkedHashMap<>(plan.lines());
    vocabulary.flags().keySet().forEach(name -> lines.put(name, words.values.get(name)));
    vocabulary.texts().keySet().forEach(name -> lines.put(name, words.values.get(name)));
    return new NamedValues(lines, words.columns);
  }

  /** The value of an input or a line; empty for a name that the plan does not have. */
  public Optional<Object> value(String name) {
    return Optional.ofNullable(values.get(name));
  }

  /** The cells of a column as they are shown; empty for a name that the plan does not have. */
  public Optional<List<Object>> column(String name) {
    return Optional.ofNullable(shown.get(name));
  }

  /** The same as a cell shows it. */
  public Optional<Object> shown(String name) {
    return value(name).map(value -> words.shown(name, value));
  }

  /** The sentence in words; "" while its guard does not hold. */
  public String say(Sentence sentence) {
    return holds(sentence.guard()) ? sentence.wording().say(this::said, unit) : "";
  }

  private List<Object> say(RowWording each) {
    int rows = columns.getOrDefault(each.along(), List.of()).size();
    return IntStream.range(0, rows)
        .<Object>mapToObj(row -> each.wording().say(name -> said(name, row), unit))
        .toList();
  }

  /** Whether the line {@code guard} is 1, or there is no guard. */
  public boolean holds(Optional<String> guard) {
    return guard.map(name -> Double.valueOf(1).equals(values.get(name))).orElse(true);
  }

  private Object said(String name, int row) {
    return columns.containsKey(name) ? coded(name, columns.get(name).get(row)) : said(name);
  }

  private Object said(String name) {
    return coded(name, values.getOrDefault(name, NamedValues.NOTHING));
  }

  private Object coded(String name, Object value) {
    return words.of(name, value).<Object>map(word -> word).orElse(value);
  }
}
