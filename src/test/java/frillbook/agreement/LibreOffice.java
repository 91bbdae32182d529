package frillbook.agreement;

import frillbook.workbook.WorkbookPackage;
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
  static final Program PROGRAM = new Program("soffice", "FRILLBOOK_REQUIRE_SOFFICE");

  /**
   * Separator, quotation mark, UTF-8, from the first line on; every text quoted, numbers with all
   * their digits, no formulas, every sheet.
   */
  private static final String VALUES =
      "Text - txt - csv (StarCalc)\t44,34,76,1,,0,true,true,false,false,false,-1";

  private final Path folder;

  /**
   * @param folder for files
   */
  LibreOffice(Path folder) {
    this.folder = folder;
  }

  @Override
  public Program program() {
    return PROGRAM;
  }

  @Override
  public List<SheetValues> values(XSSFWorkbook workbook, List<Map<String, Object>> inputs)
      throws IOException, InterruptedException {
    Path place = Files.createTempDirectory(folder, "calculated");
    Path file = place.resolve("workbook.xlsx");
    Files.write(file, WorkbookPackage.asItIs(workbook));
    List<String> job = new ArrayList<>(List.of("open\t" + file.toUri()));
    for (int index = 0; index < inputs.size(); index++) {
      inputs.get(index).forEach((name, value) -> job.add(typed(name, value)));
      job.add("save\t" + place.resolve("brief" + index + ".csv").toUri() + "\t" + VALUES);
    }
    job.add("close");
    OfficeProfile.get().calculate(Files.write(place.resolve("job.txt"), job));
    List<SheetValues> values = new ArrayList<>();
    for (int index = 0; index < inputs.size(); index++) {
      CsvSheets sheets = CsvSheets.of(workbook, place.resolve("brief" + index));
      values.add(SheetValues.of(workbook, sheets));
    }
    return values;
  }

  private static String typed(String name, Object value) {
    if (value == null || value.equals("")) {
      return "blank\t" + name;
    }
    return (value instanceof Double ? "number\t" : "text\t") + name + "\t" + value;
  }
}
