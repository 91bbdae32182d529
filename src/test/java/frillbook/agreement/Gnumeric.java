package frillbook.agreement;

import frillbook.Program;
import frillbook.TypedFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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
  public List<List<SheetValues>> values(List<Sums> all) throws IOException, InterruptedException {
    List<List<SheetValues>> values = new ArrayList<>();
    for (Sums sums : all) {
      values.add(values(sums));
    }
    return values;
  }

  private List<SheetValues> values(Sums sums) throws IOException, InterruptedException {
    Path place = Files.createTempDirectory(folder, "calculated");
    TypedFile typed = new TypedFile(sums.file());
    SheetValues sheet = SheetValues.stored(sums.workbook());
    List<SheetValues> values = new ArrayList<>();
    for (int from = 0; from < sums.inputs().size(); from += AT_ONCE) {
      List<Process> running = new ArrayList<>();
      List<Path> calculated = new ArrayList<>();
      int to = Math.min(sums.inputs().size(), from + AT_ONCE);
      for (var inputs : sums.inputs().subList(from, to)) {
        Path file = place.resolve("brief" + calculated.size() + ".xlsx");
        Files.write(file, typed.with(inputs));
        calculated.add(place.resolve("calculated" + calculated.size()));
        running.add(start(file, calculated.get(calculated.size() - 1)));
      }
      PROGRAM.await(running, printed);
      for (Path stem : calculated) {
        values.add(sheet.with(CsvSheets.of(sums.workbook(), true, stem)));
      }
    }
    return values;
  }

  /** Values as text, a file for each sheet: a workbook takes it as long again to write. */
  private Process start(Path file, Path stem) throws IOException {
    List<String> arguments =
        List.of(
            "--recalc",
            "--export-file-per-sheet",
            "--export-type=Gnumeric_stf:stf_assistant",
            "--export-options=format=raw",
            file.toString(),
            stem + "-%s.csv");
    return PROGRAM.start(arguments, printed);
  }
}
