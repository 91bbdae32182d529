package frillbook.cli;

import frillbook.look.WorkbookSetting;
import frillbook.press.Colour;
import frillbook.press.Paper;
import frillbook.press.Press;
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
  static MadeWorkbook pressed(Press press, Map<String, Object> inputs, Paper paper, Colour colour) {
    PlanReport engine = PlanReport.of(press.form(), press.unit(), inputs);
    byte[] bytes = press.fill(press.filling(engine.cells(), inputs, paper, colour));
    return new MadeWorkbook(bytes, engine, List.of());
  }

  /**
   * Templates of a person's own, with the values that they themselves calculate.
   *
   * @throws Refusal when a cell holds an error
   */
  static MadeWorkbook calculated(WorkbookTemplate template, WorkbookSetting setting) {
    OwnPlan own = OwnPlan.of(template, setting);
    return new MadeWorkbook(own.workbook().file(), own.says(), own.disagreements());
  }
}
