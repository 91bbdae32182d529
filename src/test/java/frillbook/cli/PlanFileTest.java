package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.client.PlanFile;
import frillbook.reading.PackagedTemplates;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.Form;
import frillbook.template.WorkbookTemplate;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans as a person and a spreadsheet program leave them, and files that are none. */
class PlanFileTest {
  private static final WorkbookTemplate TEMPLATE = PackagedTemplates.template();

  @TempDir private Path folder;

  private Typed small() {
    return Typed.made(folder, Ran.SMALL);
  }

  @Test
  void inputsAreReadAsTheyNowStand() throws IOException {
    Typed plan = small().with(Map.of("quantity", 7.0, "client_name", "the reading room"));
    plan.pageWritten().close();
    String said = String.join("\n", PackageText.said(plan.page()));
    assertTrue(said.contains("7 cushions, each 4 in across"), said);
    assertTrue(said.contains("for the reading room"), said);
  }

  @Test
  void formulasThatWereSavedWithoutTheirValuesAreCalculated() throws IOException {
    Typed plan = small().withoutStoredValues();
    plan.pageWritten().close();
    assertTrue(String.join("\n", PackageText.said(plan.page())).contains("4 in across"));
  }

  @Test
  void sheetsAndNamesOfAPersonsOwnDoNotMatter() throws IOException {
    Typed plan = small().changed(PlanFileTest::addOwn);
    plan.pageWritten().close();
  }

  private static void addOwn(XSSFWorkbook workbook) {
    XSSFCell cell = workbook.createSheet("Mine").createRow(0).createCell(0);
    cell.setCellFormula("SUM(1,2)");
    cell.getCTCell().getF().setStringValue("_xlfn.LET(_xlpm.a,2,_xlpm.a*3)");
    name(workbook, "a_share", "0.25");
    name(workbook, "a_lost_cell", "#REF!");
    name(workbook, "two_places", "Mine!$A$1,Mine!$B$2");
  }

  private static void name(XSSFWorkbook workbook, String text, String refersTo) {
    XSSFName name = workbook.createName();
    name.setNameName(text);
    name.setRefersToFormula(refersTo);
  }

  @Test
  void everyInputThatCannotBeUsedIsToldWithItsCell() throws IOException {
    Typed plan = small().with(Map.of("diameter", 400.0, "quantity", 2.5, "grain", "zigzag"));
    plan.without("fullness");
    assertEquals(
        Ran.refusal(
            1,
            plan.plan() + " has inputs that cannot be used.",
            "Brief!B5: found \"400\". “Finished diameter” must be a number from 4 to 60 in.",
            "Brief!B6: found \"2.5\". “Cushions” must be a whole number from 1 to 50.",
            "Brief!B8: found nothing. “Fullness” must be a number from 1 to 6 times.",
            "Brief!B11: found \"zigzag\". “Grain of the strips” must be one of: crosswise, lengthwise, bias."),
        plan.client());
    assertTrue(Files.notExists(plan.page()));
  }

  @Test
  void inchesThatCannotBeUsedAreToldAsOnATape() throws IOException {
    Typed plan = small().with(Map.of("marking_step", 1.375));
    assertTrue(
        plan.client()
            .err()
            .contains("found \"1 3/8\". “Round sizes up to” must be a number from 1/16 to 1 in."));
  }

  /** The words of the sheet, in any case, and those of an older version stand for a code. */
  @Test
  void choicesAreReadAsTheirCodes() throws IOException {
    Typed plan = small().with(Map.of("edge_finish", "Narrow Hem", "back_style", "zipped halves"));
    Map<String, Object> inputs = PlanFile.read(plan.plan(), Form.of(renamed())).inputs();
    assertEquals("narrow_hem", inputs.get("edge_finish"));
    assertEquals("zipped_halves", inputs.get("back_style"));
    assertEquals("crosswise", inputs.get("grain"));
  }

  private static WorkbookTemplate renamed() {
    String now = "narrow_hem: {word: turned twice, was: [narrow hem]}";
    return TemplateReader.read(
        file ->
            TemplateSource.packaged()
                .text(file)
                .map(text -> text.replace("narrow_hem: narrow hem", now)));
  }

  /** Nothing is zipped, so no zip is paid for. */
  @Test
  void aCellThatIsNotUsedMayHoldAnything() throws IOException {
    Typed plan = small().with(Map.of("price_zip", "ask"));
    plan.pageWritten().close();
    assertEquals(3.0, PlanFile.read(plan.plan(), Form.of(TEMPLATE)).inputs().get("price_zip"));
  }

  @Test
  void aCellThatIsUsedMayNot() throws IOException {
    Typed plan = small().with(Map.of("price_zip", "ask", "back_style", "zipped halves"));
    assertEquals(1, plan.client().exitCode());
  }

  /** A page with the price that is worked out would not be what the maker saw. */
  @Test
  void aPriceThatIsTypedOverIsRefused() throws IOException {
    Typed plan =
        small()
            .changed(
                workbook -> {
                  CellReference place =
                      new CellReference(workbook.getName("price_each").getRefersToFormula());
                  XSSFCell cell =
                      workbook
                          .getSheet(place.getSheetName())
                          .getRow(place.getRow())
                          .getCell(place.getCol());
                  cell.removeFormula();
                  cell.setCellValue(99);
                });
    assertEquals(
        Ran.refusal(
            1,
            plan.plan() + " has inputs that cannot be used.",
            "Money!B18: found \"99\" over its formula. Put the formula back and type your price"
                + " into own_price."),
        plan.client());
  }

  @Test
  void aChoiceThatWasLeftOutIsNotOffered() throws IOException {
    Typed plan = small().without("choice_two_more");
    plan.pageWritten().close();
    String said = String.join("\n", PackageText.said(plan.page()));
    assertTrue(said.contains("As pictured") && said.contains("Fuller petals"), said);
    assertTrue(!said.contains("Lighter petals"), said);
  }

  @Test
  void anInputThatWasTakenOutIsNamed() throws IOException {
    Typed plan = small().changed(workbook -> workbook.removeName(workbook.getName("diameter")));
    assertEquals(
        Ran.refusal(
            1,
            plan.plan() + " has inputs that cannot be used.",
            "There is no cell named diameter. Make a new plan with this version of frillbook."),
        plan.client());
  }

  @Test
  void aFileThatIsNotThereIsTold() {
    Path file = folder.resolve("no.xlsx");
    told(file, " was not found. Name a workbook that frillbook made.");
  }

  @Test
  void aFolderIsNoPlan() {
    told(folder, " cannot be read. Name a workbook that frillbook made.");
  }

  @Test
  void aTextIsNoWorkbook() throws IOException {
    Path file = Files.writeString(folder.resolve("text.xlsx"), "diameter 18");
    told(file, " is not an .xlsx workbook. Save the plan as .xlsx.");
  }

  @Test
  void anEmptyFileIsNoWorkbook() throws IOException {
    told(
        Files.createFile(folder.resolve("empty.xlsx")),
        " is not an .xlsx workbook. Save the plan as" + " .xlsx.");
  }

  @Test
  void anOldXlsIsAskedForAsXlsx() throws IOException {
    Path file = folder.resolve("old.xls");
    try (HSSFWorkbook workbook = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      workbook.createSheet("Brief");
      workbook.write(out);
    }
    told(file, " is not an .xlsx workbook. Save the plan as .xlsx.");
  }

  /** The first entry of an OpenDocument file names its kind (OpenDocument 1.2, part 3, 3.3). */
  @Test
  void anOpenDocumentIsAskedForAsXlsx() throws IOException {
    Path file = folder.resolve("plan.ods.xlsx");
    zip(file, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
    told(file, " is not an .xlsx workbook. Save the plan as .xlsx.");
  }

  @Test
  void anotherZipIsNoWorkbook() throws IOException {
    Path file = folder.resolve("zip.xlsx");
    zip(file, "notes.txt", "diameter 18");
    told(file, " is not an .xlsx workbook. Save the plan as .xlsx.");
  }

  private static void zip(Path file, String entry, String text) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry(entry));
      zip.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  /**
   * Plans were once made for one currency, which stood there as a formula. The deposit is half of
   * 80 yen, as {@link ClientWordsTest#moneyHasThePlacesOfItsCurrency} works it out.
   */
  @Test
  void aCurrencyThatStandsThereAsAFormulaIsRead() throws IOException {
    Typed plan = small().withFormula("currency_code", "\"JPY\"");
    plan.pageWritten().close();
    assertTrue(String.join("\n", PackageText.said(plan.page())).contains("bought: 40 JPY for"));
  }

  @Test
  void aCurrencyThatIsNoneIsToldWithItsCell() throws IOException {
    Typed plan = small().with(Map.of("currency_code", "euro"));
    told(
        plan.plan(),
        " has inputs that cannot be used.\nHabits and prices!B4: found \"euro\". “Currency” must be"
            + " an ISO 4217 code in capitals, such as EUR, GBP, JPY or USD.");
  }

  @Test
  void aUnitOfLengthThatIsNoneIsToldWithItsCell() throws IOException {
    Typed plan = small().changed(PlanFileTest::measureInEls);
    Ran ran = plan.client();
    assertEquals(1, ran.exitCode());
    assertTrue(ran.err().contains(": found \"ell\" at "), ran.err());
    assertTrue(ran.err().endsWith(". It must be in or cm. Make a new plan.\n"), ran.err());
  }

  private static void measureInEls(XSSFWorkbook workbook) {
    CellReference place = new CellReference(workbook.getName("length_unit").getRefersToFormula());
    XSSFCell cell =
        workbook.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
    cell.setCellFormula("\"ell\"");
    cell.setCellValue("ell");
  }

  @Test
  void halfAFileIsNoWorkbook() throws IOException {
    byte[] whole = Files.readAllBytes(small().plan());
    Path file = folder.resolve("half.xlsx");
    Files.write(file, java.util.Arrays.copyOf(whole, whole.length / 2));
    Ran ran = Ran.run("client", file.toString(), "-o", folder.resolve("page.xlsx").toString());
    assertEquals(Ran.refusal(1, ran.err().strip()), ran);
    assertTrue(ran.err().startsWith(file.toString()), ran.err());
  }

  @Test
  void anotherWorkbookIsNoPlan() throws IOException {
    Path file = folder.resolve("orders.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      workbook.createSheet("Orders");
      workbook.write(out);
    }
    told(
        file,
        " is not a frillbook plan: it has no cells named length_unit and currency_code. Name a"
            + " workbook that frillbook made.");
  }

  @Test
  void thePageForTheClientIsNoPlan() throws IOException {
    Typed plan = small();
    plan.pageWritten().close();
    told(
        plan.page(),
        " is not a frillbook plan: it has no cells named length_unit and currency_code. Name a"
            + " workbook that frillbook made.");
  }

  private void told(Path file, String sentence) {
    Path page = folder.resolve("page-of-none.xlsx");
    assertEquals(
        Ran.refusal(1, file + sentence), Ran.run("client", file.toString(), "-o", page.toString()));
    assertTrue(Files.notExists(page));
  }
}
