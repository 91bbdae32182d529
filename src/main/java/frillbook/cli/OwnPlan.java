package frillbook.cli;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.pressing.CalculatedWorkbook;
import frillbook.pressing.Disagreement;
import frillbook.template.Form;
import frillbook.template.LineTemplate;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What templates of a person's own say.
 *
 * @param says the engine's values, and theirs for names it does not have or of which they say
 *     something else
 * @param disagreements one sentence for every such name
 */
record OwnPlan(CalculatedWorkbook workbook, PlanReport says, List<String> disagreements) {

  /**
   * Calculates the workbook.
   *
   * @throws Refusal when a cell holds an error
   */
  static OwnPlan of(WorkbookTemplate template, WorkbookSetting setting) {
    LengthUnit unit = setting.unit();
    Map<String, Object> inputs = setting.inputs();
    PlanReport engine = PlanReport.of(Form.of(template), unit, inputs);
    CalculatedWorkbook workbook = CalculatedWorkbook.of(template, setting);
    List<String> errors = workbook.errors();
    if (!errors.isEmpty()) {
      throw new Refusal(Refusal.CANNOT, errors);
    }
    List<Disagreement> found = workbook.against(engine.cells());
    return new OwnPlan(
        workbook,
        new PlanReport(engine.form(), unit, inputs, merged(engine.values(), workbook, found)),
        found.stream().map(each -> sentence(each, template, engine)).toList());
  }

  private static NamedValues merged(
      NamedValues engine, CalculatedWorkbook workbook, List<Disagreement> found) {
    Set<String> differing = found.stream().map(Disagreement::name).collect(Collectors.toSet());
    Map<String, Object> lines = new LinkedHashMap<>(engine.lines());
    Map<String, List<Object>> columns = new LinkedHashMap<>(engine.columns());
    NamedValues own = workbook.values();
    own.lines()
        .forEach(
            (name, value) -> {
              if (differing.contains(name) || !lines.containsKey(name)) {
                lines.put(name, value);
              }
            });
    own.columns()
        .forEach(
            (name, cells) -> {
              if (differing.contains(name) || !columns.containsKey(name)) {
                columns.put(name, withoutBlankEnd(cells));
              }
            });
    return new NamedValues(lines, columns);
  }

  /** A table has more rows than most plans need. */
  private static List<Object> withoutBlankEnd(List<Object> cells) {
    List<Object> said = new ArrayList<>(cells);
    while (!said.isEmpty() && said.get(said.size() - 1).equals(NamedValues.NOTHING)) {
      said.remove(said.size() - 1);
    }
    return said;
  }

  private static String sentence(Disagreement found, WorkbookTemplate template, PlanReport engine) {
    ValueFormat format =
        template.lines().stream()
            .filter(line -> line.name().equals(found.name()))
            .map(LineTemplate::format)
            .findFirst()
            .orElse(ValueFormat.NUMBER);
    String row = found.row() == 0 ? "" : ", row " + found.row();
    return found.name()
        + row
        + ": yours "
        + shown(found.yours(), format, engine)
        + ", frillbook's "
        + shown(found.ours(), format, engine);
  }

  private static String shown(Object value, ValueFormat format, PlanReport engine) {
    return value instanceof Double
        ? Shown.value(value, format, engine.unit(), engine.moneyPlaces())
        : "\"" + value + "\"";
  }
}
