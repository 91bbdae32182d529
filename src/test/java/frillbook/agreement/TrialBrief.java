package frillbook.agreement;

import frillbook.brief.Brief;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.CodeWords;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Inputs that engine and workbook are both given.
 *
 * @param title what is special about it, for messages
 * @param words of the codes among the inputs
 * @param presets what the template says for every input; null for a cell that is blank
 * @param changes what differs from it: a Double, a String, or null for an emptied cell
 */
record TrialBrief(
    String title,
    LengthUnit unit,
    CodeWords words,
    Map<String, Object> presets,
    Map<String, Object> changes) {

  /** Every input as the template presets it. */
  static TrialBrief preset(WorkbookTemplate template, LengthUnit unit) {
    Map<String, Object> presets = new LinkedHashMap<>();
    for (InputTemplate input : template.inputs()) {
      Object preset = input.preset(unit);
      presets.put(input.name(), input.isWords() || preset instanceof Double ? preset : null);
    }
    return new TrialBrief(
        "presets", unit, Form.of(template).vocabulary().words(), presets, Map.of());
  }

  /** The same with one input changed. */
  TrialBrief with(String name, Object value) {
    if (!presets.containsKey(name)) {
      throw new IllegalArgumentException("the template has no input " + name);
    }
    Map<String, Object> changed = new LinkedHashMap<>(changes);
    changed.put(name, value);
    return new TrialBrief(title, unit, words, presets, changed);
  }

  /** The same in the currency with this ISO 4217 code. */
  TrialBrief in(String code) {
    return with("currency_code", code);
  }

  TrialBrief titled(String text) {
    return new TrialBrief(text, unit, words, presets, changes);
  }

  /** A value for every input. */
  Map<String, Object> inputs() {
    Map<String, Object> inputs = new LinkedHashMap<>(presets);
    inputs.putAll(changes);
    return inputs;
  }

  /** The same as a person types it: words in place of codes. */
  Map<String, Object> cells() {
    Map<String, Object> cells = inputs();
    cells.replaceAll(words::shown);
    return cells;
  }

  double number(String input) {
    return (Double) inputs().get(input);
  }

  /** An emptied text says nothing; any other emptied cell is refused. */
  Brief brief() {
    Map<String, Object> inputs = inputs();
    presets.forEach(
        (name, preset) -> inputs.putIfAbsent(name, preset instanceof String ? "" : null));
    return Brief.of(unit, inputs);
  }

  /** What the engine says to it. */
  Plan plan() {
    return Plan.of(brief());
  }

  /** The same under the workbook's names. */
  NamedValues planned() {
    return NamedValues.of(plan());
  }

  @Override
  public String toString() {
    return title + " (" + unit().symbol() + ") " + changes;
  }
}
