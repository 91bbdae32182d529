package frillbook.workbook;

import frillbook.brief.LengthUnit;
import frillbook.press.Paper;
import frillbook.template.TemplateReader;
import frillbook.template.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The small template of the tests: flags on a tape, easily worked out by hand. */
final class Bunting {
  static final WorkbookTemplate TEMPLATE =
      TemplateReader.read(TemplateSource.directory(Path.of("src/test/resources/templates/small")));

  private Bunting() {}

  static XSSFWorkbook compiled(LengthUnit unit) {
    return compiled(unit, Map.of());
  }

  static XSSFWorkbook compiled(LengthUnit unit, Map<String, Object> inputs) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(workbook, TEMPLATE, new WorkbookSetting(unit, inputs, Paper.A4));
    return workbook;
  }

  /** The file, every formula with its value. */
  static byte[] file(LengthUnit unit, Map<String, Object> inputs) {
    WorkbookSetting setting = new WorkbookSetting(unit, inputs, Paper.A4);
    return CalculatedWorkbook.of(TEMPLATE, setting).file();
  }

  static WorkbookValues calculated(LengthUnit unit) {
    WorkbookValues values = new WorkbookValues(compiled(unit));
    values.recalculate();
    return values;
  }
}
