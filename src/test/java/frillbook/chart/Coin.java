package frillbook.chart;

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

/** The template of the chart tests: a coin drawn, its area read off, its worth in bars. */
public final class Coin {
  static final WorkbookTemplate TEMPLATE =
      TemplateReader.read(TemplateSource.directory(Path.of("src/test/resources/templates/charts")));

  static final WorkbookSetting SETTING = new WorkbookSetting(LengthUnit.CM, Map.of(), Paper.A4);

  private Coin() {}

  /** The file, every formula with its value. */
  public static byte[] file() {
    return CalculatedWorkbook.of(TEMPLATE, SETTING).file();
  }

  static XSSFWorkbook compiled(WorkbookSetting setting) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler().compileInto(workbook, TEMPLATE, setting);
    return workbook;
  }

  public static byte[] clientPage() {
    return Pages.of(file(), "Page");
  }
}
