package frillbook.agreement;

import frillbook.calculation.WorkbookValues;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.WorkbookCompiler;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** One compiled workbook whose inputs are changed as a person would, again and again. */
final class TrialWorkbook {
  private final WorkbookTemplate template;
  private final WorkbookValues values;
  private final SheetValues sheet;

  TrialWorkbook(WorkbookTemplate template, XSSFWorkbook workbook) {
    this.template = template;
    this.values = new WorkbookValues(workbook);
    this.sheet = SheetValues.of(workbook, values);
  }

  /** The template with its presets, not calculated yet. */
  static XSSFWorkbook compiled(WorkbookTemplate template, LengthUnit unit) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    WorkbookSetting setting = new WorkbookSetting(unit, Map.of(), Paper.A4);
    new WorkbookCompiler().compileInto(workbook, template, setting);
    return workbook;
  }

  /** Types the inputs of {@code brief} and calculates. */
  SheetValues given(TrialBrief brief) {
    brief.cells().forEach(values::set);
    values.recalculate();
    return sheet;
  }

  Findings compare(List<TrialBrief> briefs) {
    return briefs.stream().map(this::compare).reduce(Findings.NONE, Findings::and);
  }

  /** Compares what has a name; an error anywhere is a difference too. */
  Findings compare(TrialBrief brief) {
    SheetValues given = given(brief);
    return Comparison.of(template, brief, given).and(Findings.errors(brief, errors()));
  }

  /** Its cells as they stand. */
  SheetValues sheet() {
    return sheet;
  }

  List<XSSFCell> formulaCells() {
    return values.formulaCells();
  }

  /** Cells that show an error, with their addresses. */
  List<String> errors() {
    return values.errors();
  }
}
