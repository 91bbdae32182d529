package frillbook.template;

import frillbook.brief.LengthUnit;
import frillbook.naming.NamedValues;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What a template's sentences say of one plan: the words its workbook shows. */
public final class PlanWords {
  private final LengthUnit unit;
  private final Map<String, Object> values = new HashMap<>();

  /**
   * @param inputs every input by name; null for a cell that was emptied
   * @param plan the values that follow from them
   */
  public PlanWords(
      WorkbookTemplate template, LengthUnit unit, Map<String, Object> inputs, NamedValues plan) {
    this.unit = unit;
    inputs.forEach((name, value) -> values.put(name, value == null ? "" : value));
    values.putAll(plan.lines());
    for (LineTemplate line : template.lines()) {
      line.text().ifPresent(text -> values.put(line.name(), said(text, line.guard())));
    }
  }

  /** {@code plan} with what its lines of text say. */
  public static NamedValues complete(
      WorkbookTemplate template, LengthUnit unit, Map<String, Object> inputs, NamedValues plan) {
    PlanWords words = new PlanWords(template, unit, inputs, plan);
    Map<String, Object> lines = new LinkedHashMap<>(plan.lines());
    template.lines().stream()
        .filter(line -> line.text().isPresent())
        .forEach(line -> lines.put(line.name(), words.line(line)));
    return new NamedValues(lines, plan.columns());
  }

  /** What a line of text says; "" while its guard does not hold. */
  public Object line(LineTemplate line) {
    return values.getOrDefault(line.name(), NamedValues.NOTHING);
  }

  /** What a unit says, as written in the template. */
  public String unit(String written) {
    return UnitText.of(written).say(this::value, unit);
  }

  /** The sentence; "" while its guard does not hold. */
  public String sentence(SentenceTemplate sentence) {
    return said(sentence.text(), sentence.guard());
  }

  /** Lines of text may speak of lines of text that stand before them. */
  private String said(WordingText text, Optional<String> guard) {
    return holds(guard) ? text.wording().say(this::value, unit) : "";
  }

  /** Whether the line {@code guard} is 1, or there is no guard. */
  public boolean holds(Optional<String> guard) {
    return guard.map(name -> Double.valueOf(1).equals(values.get(name))).orElse(true);
  }

  private Object value(String name) {
    return values.getOrDefault(name, NamedValues.NOTHING);
  }
}
