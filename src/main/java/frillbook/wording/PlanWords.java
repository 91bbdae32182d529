package frillbook.wording;

import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What sentences say of one plan: the words its workbook shows. */
public final class PlanWords {
  private final LengthUnit unit;
  private final Map<String, Object> values = new HashMap<>();

  /**
   * @param texts lines that are words, by name; one may speak of those before it
   * @param inputs every input by name; null for a cell that was emptied
   * @param plan the values that follow from them; what it says of {@code texts} is not said anew
   */
  public PlanWords(
      Map<String, Sentence> texts, LengthUnit unit, Map<String, Object> inputs, NamedValues plan) {
    this.unit = unit;
    inputs.forEach((name, value) -> values.put(name, value == null ? "" : value));
    values.putAll(plan.lines());
    for (Map.Entry<String, Sentence> text : texts.entrySet()) {
      if (!values.containsKey(text.getKey())) {
        values.put(text.getKey(), say(text.getValue()));
      }
    }
  }

  /** {@code plan} with what {@code texts} say of it. */
  public static NamedValues complete(
      Map<String, Sentence> texts, LengthUnit unit, Map<String, Object> inputs, NamedValues plan) {
    PlanWords words = new PlanWords(texts, unit, inputs, plan);
    Map<String, Object> lines = new LinkedHashMap<>(plan.lines());
    texts.keySet().forEach(name -> lines.put(name, words.values.get(name)));
    return new NamedValues(lines, plan.columns());
  }

  /** The value of an input or a line; empty for a name that the plan does not have. */
  public Optional<Object> value(String name) {
    return Optional.ofNullable(values.get(name));
  }

  /** The sentence in words; "" while its guard does not hold. */
  public String say(Sentence sentence) {
    return holds(sentence.guard()) ? sentence.wording().say(this::said, unit) : "";
  }

  /** Whether the line {@code guard} is 1, or there is no guard. */
  public boolean holds(Optional<String> guard) {
    return guard.map(name -> Double.valueOf(1).equals(values.get(name))).orElse(true);
  }

  private Object said(String name) {
    return values.getOrDefault(name, NamedValues.NOTHING);
  }
}
