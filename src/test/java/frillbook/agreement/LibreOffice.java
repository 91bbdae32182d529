package frillbook.agreement;

import frillbook.Office;
import frillbook.Program;
import frillbook.pressing.WorkbookPackage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * LibreOffice Calc, run without a window. It opens a workbook without values once, and then inputs
 * are typed into it, as a maker does; it writes values, separated by commas.
 */
final class LibreOffice implements Calculator {
  private final Path folder;

  /**
   * @param folder for files
   */
  LibreOffice(Path folder) {
    this.folder = folder;
  }

  @Override
  public Program program() {
    return Office.PROGRAM;
  }

  @Override
  public List<SheetValues> values(XSSFWorkbook workbook, List<Map<String, Object>> inputs)
      throws IOException, InterruptedException {
    Path place = Files.createTempDirectory(folder, "calculated");
    Path file = place.resolve("workbook.xlsx");
    Files.write(file, WorkbookPackage.asItIs(workbook));
    Office office = new Office().open(file);
    for (int index = 0; index < inputs.size(); index++) {
      inputs.get(index).forEach(office::type);
      office.saveValues(place.resolve("brief" + index + ".csv"));
    }
    office.close().run();
    List<SheetValues> values = new ArrayList<>();
    for (int index = 0; index < inputs.size(); index++) {
      CsvSheets sheets = CsvSheets.of(workbook, place.resolve("brief" + index));
      values.add(SheetValues.of(workbook, sheets));
    }
    return values;
  }
}
