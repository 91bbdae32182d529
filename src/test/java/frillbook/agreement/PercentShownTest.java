package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Office;
import frillbook.measure.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Per cent as programs print it: by hand, as one says it. */
final class PercentShownTest {
  private static final String SHEET =
      """
      sheet: Shares
      title: Shares
      widths: [30, 20, 20, 10, 30]
      rows:
        - {line: whole, label: Whole, unit: "%", format: percent, guard: none, formula: "0.6", note: N.}
        - {line: half, label: Half, unit: "%", format: percent, guard: none, formula: "0.125", note: N.}
        - {line: fine, label: Fine, unit: "%", format: percent, guard: none, formula: "0.08875", note: N.}
        - {line: none_of_it, label: Nothing, unit: "%", format: percent, guard: none, formula: "0", note: N.}
      """;

  @TempDir private Path folder;

  private static void shows(PrintedPages page) {
    List<String> lines = page.pages().get(0);
    for (String line : List.of("Whole +60%", "Half +12\\.5%", "Fine +8\\.875%", "Nothing +0%")) {
      assertTrue(lines.stream().anyMatch(l -> l.matches(line + " .*")), line + " in " + lines);
    }
  }

  @Test
  void libreOfficePrintsNoZerosAndNoBarePoint() throws Exception {
    Office.PROGRAM.requireOrSkip();
    PrintedPages.PDF_TO_TEXT.requireOrSkip();
    Path pdf = folder.resolve("shares.pdf");
    Office office = new Office();
    office.open(OneSheet.written(folder, LengthUnit.CM, SHEET)).print(pdf).close();
    office.run();
    shows(PrintedPages.of(pdf, folder));
  }

  @Test
  void gnumericPrintsNoZerosAndNoBarePoint() throws Exception {
    Gnumeric.PROGRAM.requireOrSkip();
    PrintedPages.PDF_TO_TEXT.requireOrSkip();
    shows(PrintedPages.byGnumeric(OneSheet.written(folder, LengthUnit.CM, SHEET), folder));
  }
}
