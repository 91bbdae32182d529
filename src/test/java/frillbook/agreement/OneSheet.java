package frillbook.agreement;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.pressing.WorkbookPackage;
import frillbook.reading.TemplateReader;
import frillbook.workbook.WorkbookCompiler;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook of a template with a single sheet, to be printed. */
final class OneSheet {
  private OneSheet() {}

  /** Written into {@code folder}. */
  static Path written(Path folder, LengthUnit unit, String sheet) throws IOException {
    Map<String, String> files =
        Map.of("workbook.yaml", "title: T\nsheets: [one.yaml]\n", "one.yaml", sheet);
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      new WorkbookCompiler()
          .compileInto(
              workbook,
              TemplateReader.read(file -> Optional.ofNullable(files.get(file))),
              new WorkbookSetting(unit, Map.of(), Paper.A4));
      return Files.write(folder.resolve("one.xlsx"), WorkbookPackage.asItIs(workbook));
    }
  }
}
