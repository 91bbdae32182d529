package frillbook.workbook;

import frillbook.brief.LengthUnit;
import frillbook.press.Paper;
import frillbook.template.TemplateReader;
import frillbook.template.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The template of the chart tests: a coin drawn, its area read off, its worth in bars. */
final class Coin {
  static final WorkbookTemplate TEMPLATE =
      TemplateReader.read(TemplateSource.directory(Path.of("src/test/resources/templates/charts")));

  static final WorkbookSetting SETTING = new WorkbookSetting(LengthUnit.CM, Map.of(), Paper.A4);

  private Coin() {}

  /** The file, every formula with its value. */
  static byte[] file() {
    return CalculatedWorkbook.of(TEMPLATE, SETTING).file();
  }

  static XSSFWorkbook compiled(WorkbookSetting setting) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler().compileInto(workbook, TEMPLATE, setting);
    return workbook;
  }

  static byte[] clientPage() {
    return Pages.of(file(), "Page");
  }
}
