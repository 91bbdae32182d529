package frillbook.cli;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.press.Press;
import frillbook.pressing.CalculatedWorkbook;
import frillbook.pressing.Disagreement;
import frillbook.template.Form;
import frillbook.template.LineTemplate;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import java.util.List;
import java.util.Map;

/**
 * A workbook as it is about to be written, and what it says: nobody is told one number and handed
 * another.
 *
 * @param disagreements one sentence for every name of which templates of a person's own say
 *     something else than the engine; none for the built-in ones
 */
record MadeWorkbook(byte[] bytes, PlanReport says, List<String> disagreements) {

  /** Built-in templates, with the engine's values. */
  static MadeWorkbook pressed(Press press, Map<String, Object> inputs, Paper paper) {
    PlanReport engine = PlanReport.of(press.form(), press.unit(), inputs);
    byte[] bytes = press.fill(press.filling(engine.cells(), inputs, paper));
    return new MadeWorkbook(bytes, engine, List.of());
  }

  /**
   * Templates of a person's own, with the values that they themselves calculate.
   *
   * @throws Refusal when a cell holds an error
   */
  static MadeWorkbook calculated(
      WorkbookTemplate template, LengthUnit unit, Map<String, Object> inputs, Paper paper) {
    PlanReport engine = PlanReport.of(Form.of(template), unit, inputs);
    CalculatedWorkbook workbook =
        CalculatedWorkbook.of(template, new WorkbookSetting(unit, inputs, paper));
    List<String> errors = workbook.errors();
    if (!errors.isEmpty()) {
      throw new Refusal(Refusal.CANNOT, errors);
    }
    return new MadeWorkbook(
        workbook.file(),
        new PlanReport(engine.form(), unit, inputs, workbook.values()),
        workbook.against(engine.cells()).stream()
            .map(found -> sentence(found, template, engine))
            .toList());
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
