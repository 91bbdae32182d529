package frillbook.chart;

import frillbook.calculation.WorkbookValues;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.pressing.CalculatedWorkbook;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.WorkbookCompiler;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The small template of the tests: flags on a tape, easily worked out by hand. */
public final class Bunting {
  public static final WorkbookTemplate TEMPLATE =
      TemplateReader.read(TemplateSource.directory(Path.of("src/test/resources/templates/small")));

  private Bunting() {}

  public static XSSFWorkbook compiled(LengthUnit unit) {
    return compiled(unit, Map.of());
  }

  public static XSSFWorkbook compiled(LengthUnit unit, Map<String, Object> inputs) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(workbook, TEMPLATE, new WorkbookSetting(unit, inputs, Paper.A4));
    return workbook;
  }

  /** The file, every formula with its value. */
  public static byte[] file(LengthUnit unit, Map<String, Object> inputs) {
    WorkbookSetting setting = new WorkbookSetting(unit, inputs, Paper.A4);
    return CalculatedWorkbook.of(TEMPLATE, setting).file();
  }

  public static WorkbookValues calculated(LengthUnit unit) {
    WorkbookValues values = new WorkbookValues(compiled(unit));
    values.recalculate();
    return values;
  }
}
