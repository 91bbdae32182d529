package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Office;
import frillbook.Program;
import frillbook.calculation.WorkbookValues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan that LibreOffice has saved, and the client's page as it prints. */
class ClientThroughLibreOfficeTest {
  private static final Program PDF_INFO = new Program("pdfinfo", Office.PROGRAM.demandedBy());

  @TempDir private Path folder;

  @BeforeEach
  void needsLibreOffice() {
    Office.PROGRAM.requireOrSkip();
    PDF_INFO.requireOrSkip();
  }

  @Test
  void aPlanThatItSavedIsReadWithItsInputsAsTheyStand() throws IOException, InterruptedException {
    Typed changed =
        Typed.made(folder, Ran.SMALL)
            .with(Map.of("quantity", 7.0, "diameter", 5.0, "terms_words", "=no formula"))
            .withoutStoredValues();
    Typed saved = new Typed(folder.resolve("saved.xlsx"));
    new Office().open(changed.plan()).saveWorkbook(saved.plan()).close().run();
    try (XSSFWorkbook plan = Typed.open(saved.plan());
        XSSFWorkbook page = saved.pageWritten()) {
      assertEquals("=no formula", new WorkbookValues(plan).value("terms_words"));
      String said = String.join("\n", PackageText.said(saved.page()));
      assertTrue(said.contains("7 cushions, each 5 in across, laid flat"), said);
      // What LibreOffice has calculated for the maker's sheet is what the client reads.
      double price = (Double) new WorkbookValues(plan).value("price_each");
      assertNotNull(PageCells.saying(page, String.format(Locale.ROOT, "%.2f USD", price)));
    }
  }

  @Test
  void thePageIsOnePageEvenWithTheLongestWords() throws IOException, InterruptedException {
    String longest = "In so many words as there may be. ".repeat(6).substring(0, 200);
    Typed plan =
        Typed.made(
            folder,
            "--input=terms_words=" + longest,
            "--input=care_words=" + longest,
            "--input=frill_fabric_words=" + longest,
            "--input=base_fabric_words=" + longest,
            "--input=project_title=" + longest);
    plan.pageWritten().close();
    Path pdf = folder.resolve("page.pdf");
    new Office().open(plan.page()).print(pdf).close().run();
    assertEquals(1, pages(pdf));
  }

  private static int pages(Path pdf) throws IOException, InterruptedException {
    Path said = pdf.resolveSibling("pdfinfo.txt");
    PDF_INFO.await(List.of(PDF_INFO.start(List.of(pdf.toString()), said)), said);
    Matcher pages = Pattern.compile("Pages:\\s+(\\d+)").matcher(Files.readString(said));
    assertTrue(pages.find(), said.toString());
    return Integer.parseInt(pages.group(1));
  }
}
