package frillbook.agreement;

import frillbook.Program;
import frillbook.pressing.WorkbookPackage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Gnumeric's converter, which takes one file at a time, its inputs typed into it before. */
final class Gnumeric implements Calculator {
  static final Program PROGRAM = new Program("ssconvert", "FRILLBOOK_REQUIRE_SSCONVERT");

  private static final int AT_ONCE = 2;

  private final Path folder;
  private final Path printed;

  /**
   * @param folder for files
   */
  Gnumeric(Path folder) {
    this.folder = folder;
    this.printed = folder.resolve("ssconvert.txt");
  }

  @Override
  public Program program() {
    return PROGRAM;
  }

  @Override
  public List<SheetValues> values(XSSFWorkbook workbook, List<Map<String, Object>> inputs)
      throws IOException, InterruptedException {
    Path place = Files.createTempDirectory(folder, "calculated");
    List<SheetValues> values = new ArrayList<>();
    for (int from = 0; from < inputs.size(); from += AT_ONCE) {
      List<Process> running = new ArrayList<>();
      List<Path> calculated = new ArrayList<>();
      for (var typed : inputs.subList(from, Math.min(inputs.size(), from + AT_ONCE))) {
        Path file = place.resolve("brief" + calculated.size() + ".xlsx");
        Files.write(file, WorkbookPackage.asItIs(TrialWorkbook.typed(workbook, typed)));
        calculated.add(place.resolve("calculated" + calculated.size() + ".xlsx"));
        running.add(start(file, calculated.get(calculated.size() - 1)));
      }
      PROGRAM.await(running, printed);
      for (Path file : calculated) {
        values.add(SheetValues.of(workbook, FileValues.of(workbook, file)));
      }
    }
    return values;
  }

  private Process start(Path file, Path calculated) throws IOException {
    List<String> arguments =
        List.of(
            "--recalc",
            "--export-type=Gnumeric_Excel:xlsx",
            file.toString(),
            calculated.toString());
    return PROGRAM.start(arguments, printed);
  }
}
