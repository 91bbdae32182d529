package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import frillbook.workbook.WorkbookValues;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan that LibreOffice has saved, and the client's page as it prints. */
class ClientThroughLibreOfficeTest {
  private static final String SOFFICE = "soffice";

  @TempDir private Path folder;

  @BeforeEach
  void needsLibreOffice() {
    boolean required = Boolean.parseBoolean(System.getenv("FRILLBOOK_REQUIRE_SOFFICE"));
    assumeTrue(required || isInstalled(SOFFICE), "LibreOffice is not installed");
  }

  @Test
  void aPlanThatItSavedIsReadWithItsInputsAsTheyStand() throws IOException, InterruptedException {
    Typed changed =
        Typed.made(folder, Ran.SMALL)
            .with(Map.of("quantity", 7.0, "diameter", 5.0, "terms_words", "=no formula"))
            .withoutStoredValues();
    Typed saved = new Typed(converted(changed.plan(), "xlsx"));
    try (XSSFWorkbook plan = Typed.open(saved.plan());
        XSSFWorkbook page = saved.pageWritten()) {
      assertEquals("=no formula", new WorkbookValues(plan).value("terms_words"));
      String said = String.join("\n", PackageText.said(saved.page()));
      assertTrue(said.contains("7 round cushions, each 5 in across"), said);
      // What LibreOffice has calculated for the maker's sheet is what the client reads.
      double price = (Double) new WorkbookValues(plan).value("price_each");
      assertEquals(price, PageCells.firstUnder(page, "Price each").getNumericCellValue());
    }
  }

  @Test
  void thePageIsOnePageEvenWithTheLongestWords() throws IOException, InterruptedException {
    assumeTrue(isInstalled("pdfinfo"), "pdfinfo is not installed");
    String longest = "In so many words as there may be. ".repeat(6).substring(0, 200);
    Typed plan =
        Typed.made(
            folder,
            "--set=terms_words=" + longest,
            "--set=care_words=" + longest,
            "--set=frill_cloth_words=" + longest,
            "--set=base_cloth_words=" + longest,
            "--set=project_title=" + longest);
    plan.pageWritten().close();
    Path pdf = converted(plan.page(), "pdf");
    String told = output("pdfinfo", pdf.toString());
    assertTrue(told.matches("(?s).*\\bPages:\\s+1\\b.*"), told);
  }

  private Path converted(Path file, String kind) throws IOException, InterruptedException {
    Path into = Files.createDirectories(folder.resolve("converted"));
    String profile = "-env:UserInstallation=" + folder.resolve("profile").toUri();
    output(
        SOFFICE,
        profile,
        "--headless",
        "--convert-to",
        kind,
        "--outdir",
        into.toString(),
        file.toString());
    String name = file.getFileName().toString().replace("xlsx", kind);
    assertTrue(Files.exists(into.resolve(name)), name);
    return into.resolve(name);
  }

  private static String output(String... command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String output = new String(process.getInputStream().readAllBytes());
    assertTrue(process.waitFor(2, TimeUnit.MINUTES), output);
    assertEquals(0, process.exitValue(), output);
    return output;
  }

  private static boolean isInstalled(String program) {
    String path = System.getenv("PATH");
    assertNotNull(path);
    for (String place : path.split(File.pathSeparator)) {
      if (Files.isExecutable(Path.of(place, program))) {
        return true;
      }
    }
    return false;
  }
}
