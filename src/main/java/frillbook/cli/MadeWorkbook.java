package frillbook.cli;

import frillbook.brief.LengthUnit;
import frillbook.template.LineTemplate;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.CalculatedWorkbook;
import frillbook.workbook.CellValues;
import frillbook.workbook.Disagreement;
import frillbook.workbook.Paper;
import frillbook.workbook.WorkbookSetting;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A workbook as it is about to be written, its values beside the engine's: nobody is told one
 * number and handed another.
 *
 * @param engine what the engine says
 * @param file what the workbook says
 */
record MadeWorkbook(CalculatedWorkbook workbook, PlanReport engine, PlanReport file) {

  /**
   * Compiles and calculates.
   *
   * @throws Refusal when a cell holds an error
   */
  static MadeWorkbook of(
      WorkbookTemplate template, LengthUnit unit, Map<String, Object> inputs, Paper paper) {
    PlanReport engine = PlanReport.of(template, unit, inputs);
    CalculatedWorkbook workbook =
        CalculatedWorkbook.of(template, new WorkbookSetting(unit, inputs, paper));
    List<String> errors = workbook.errors();
    if (!errors.isEmpty()) {
      throw new Refusal(Refusal.CANNOT, errors);
    }
    return new MadeWorkbook(
        workbook, engine, new PlanReport(template, unit, inputs, workbook.values()));
  }

  void save(Path target, boolean force) {
    PlanWorkbook.put(workbook.file(), target, force);
  }

  /** One sentence for every name that is not what the engine says; none for our own templates. */
  List<String> disagreements() {
    CellValues ours =
        new CellValues(engine.template(), engine.unit(), engine.inputs(), engine.values());
    return workbook.against(ours).stream().map(this::sentence).toList();
  }

  private String sentence(Disagreement found) {
    String row = found.row() == 0 ? "" : ", row " + found.row();
    return found.name()
        + row
        + ": yours "
        + shown(found, found.yours())
        + ", frillbook's "
        + shown(found, found.ours());
  }

  private String shown(Disagreement found, Object value) {
    ValueFormat format =
        engine.template().lines().stream()
            .filter(line -> line.name().equals(found.name()))
            .map(LineTemplate::format)
            .findFirst()
            .orElse(ValueFormat.NUMBER);
    return value instanceof Double
        ? Shown.value(value, format, engine.unit(), engine.moneyPlaces())
        : "\"" + value + "\"";
  }
}
