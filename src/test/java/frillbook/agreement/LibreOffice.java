package frillbook.agreement;

import frillbook.Office;
import frillbook.Program;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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
  public List<List<SheetValues>> values(List<Sums> all) throws IOException, InterruptedException {
    Path place = Files.createTempDirectory(folder, "calculated");
    Office office = new Office();
    for (int number = 0; number < all.size(); number++) {
      Path file = place.resolve("workbook" + number + ".xlsx");
      office.open(Files.write(file, all.get(number).file()));
      for (int index = 0; index < all.get(number).inputs().size(); index++) {
        all.get(number).inputs().get(index).forEach(office::type);
        office.saveValues(place.resolve(stem(number, index) + ".csv"));
      }
      office.close();
    }
    office.run();
    List<List<SheetValues>> values = new ArrayList<>();
    for (int number = 0; number < all.size(); number++) {
      values.add(read(all.get(number), number, place));
    }
    return values;
  }

  private static String stem(int number, int index) {
    return "workbook" + number + "-" + index;
  }

  private static List<SheetValues> read(Sums sums, int number, Path place) throws IOException {
    SheetValues cells = SheetValues.stored(sums.workbook());
    List<SheetValues> values = new ArrayList<>();
    for (int index = 0; index < sums.inputs().size(); index++) {
      CsvSheets sheets = CsvSheets.of(sums.workbook(), false, place.resolve(stem(number, index)));
      values.add(cells.with(sheets));
    }
    return values;
  }
}
