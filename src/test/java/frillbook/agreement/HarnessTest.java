package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The comparison finds what is wrong, and nothing else. */
final class HarnessTest {
  private static final String SLIGHTLY_MORE = ")*(1+1E-8)";

  /** A line of a sheet file from its name to the next entry. */
  private static final String LINE = "(?s)  - line: %s\n.*?\n(?=  - )";

  private final TrialBrief brief = TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);

  /** Compiled once; what a test changes of it is put back. */
  private static final XSSFWorkbook WORKBOOK = TrialWorkbook.compiled(Trials.TEMPLATE, Trials.INCH);

  private final Map<XSSFCell, String> before = new IdentityHashMap<>();

  @AfterEach
  void putBack() {
    before.forEach(XSSFCell::setCellFormula);
  }

  private void change(XSSFCell cell, String formula) {
    before.putIfAbsent(cell, cell.getCellFormula());
    cell.setCellFormula(formula);
  }

  private XSSFCell cell(String name, int row) {
    return SheetValues.stored(WORKBOOK).cells(name).get(row - 1);
  }

  private Findings compared(WorkbookTemplate template, TrialBrief given) {
    return new TrialWorkbook(template, WORKBOOK).compare(given);
  }

  /** The only difference, after one cell has been given another formula. */
  private Difference onlyDifference(XSSFCell cell, String formula, TrialBrief given) {
    change(cell, formula);
    Findings findings = compared(Trials.TEMPLATE, given);
    assertThrows(AssertionError.class, findings::requireAgreement);
    assertEquals(1, findings.differences().size(), findings.differences().toString());
    return findings.differences().get(0);
  }

  /** The packaged template with one file changed. */
  private static WorkbookTemplate rewritten(String file, UnaryOperator<String> change) {
    TemplateSource packaged = TemplateSource.packaged();
    return TemplateReader.read(
        name -> name.equals(file) ? packaged.text(name).map(change) : packaged.text(name));
  }

  @Test
  void nothingIsFoundInARightWorkbook() {
    Findings findings = compared(Trials.TEMPLATE, brief);
    findings.requireAgreement();
    assertTrue(findings.cells() > 1000, findings.toString());
  }

  @Test
  void aLineThatIsOffInTheEighthDigitIsFound() {
    XSSFCell cell = cell("stitches_per_cm", 1);
    String formula = "(" + cell.getCellFormula() + SLIGHTLY_MORE;
    Difference found = onlyDifference(cell, formula, brief);
    assertEquals("stitches_per_cm", found.name());
    assertEquals(SheetValues.where(cell), found.where());
    assertEquals(formula, found.formula());
  }

  @Test
  void oneCellInTheMiddleOfATableIsFound() {
    XSSFCell cell = cell("grain_ratio", 2);
    String formula = "(" + cell.getCellFormula() + SLIGHTLY_MORE;
    Difference found = onlyDifference(cell, formula, brief);
    assertEquals("grain_ratio", found.name());
    assertEquals(SheetValues.where(cell), found.where());
  }

  @Test
  void aCellBelowTheLastRowOfThePlanThatIsNotBlankIsFound() {
    XSSFCell cell = cell("running_flat", 200);
    Difference found = onlyDifference(cell, "0", brief);
    assertEquals(SheetValues.where(cell), found.where());
    assertEquals("", found.engine());
  }

  /**
   * The plan is stopped by another check, so that nothing else depends on this one: its fault, its
   * sentence on the sheet of checks, and both once more in the second row of the first sheet.
   */
  @Test
  void aCheckThatFailsWhereItShouldPassIsFound() {
    change(cell("rows_cover_base", 1), "2");
    Findings findings = compared(Trials.TEMPLATE, brief.with("centre_gap", 8.0));
    Difference found = findings.differences().get(0);
    assertEquals(
        List.of("rows_cover_base", "FirstVerdict", "Failing", "Verdict", "FaultSentence"),
        findings.differences().stream().map(Difference::name).toList());
    assertEquals(0.0, found.engine());
    assertEquals(2.0, found.sheet());
  }

  @Test
  void aTextThatReadsOtherwiseIsFound() {
    Difference found = onlyDifference(cell("seam_name", 2), "\"down\"", brief);
    assertEquals("down", found.sheet());
  }

  @Test
  void aSentenceThatReadsOtherwiseIsFound() {
    XSSFCell sentence = WORKBOOK.getSheet("Method").getRow(5).getCell(2);
    Difference found = onlyDifference(sentence, "\"Cut.\"", brief);
    assertEquals("Said", found.name());
    assertEquals("Cut.", found.sheet());
    assertTrue(found.engine().toString().startsWith("Check what you have. "), found.toString());
  }

  @Test
  void aNumberWrittenAsATextIsFound() {
    XSSFCell cell = cell("cover_reach", 1);
    change(cell, "\"2\"");
    Findings findings = compared(Trials.TEMPLATE, brief);
    assertEquals("cover_reach", findings.differences().get(0).name());
  }

  @Test
  void aTemplateLineWithoutRecordComponentIsFound() {
    String line =
        """

          - line: petals
            label: Petals
            unit: petals
            format: count
            formula: ring_count*8
            note: No record knows them.
        """;
    WorkbookTemplate template = rewritten("brief.yaml", text -> text + line);
    XSSFWorkbook compiled = TrialWorkbook.compiled(template, Trials.INCH);
    Findings findings = new TrialWorkbook(template, compiled).compare(brief);
    assertThrows(AssertionError.class, findings::requireAgreement);
    assertEquals(List.of("petals"), findings.differences().stream().map(Difference::name).toList());
  }

  @Test
  void aRecordComponentWithoutTemplateLineIsFound() {
    WorkbookTemplate shorter =
        rewritten(
            "workings.yaml", text -> text.replaceFirst(LINE.formatted("stitches_per_cm"), ""));
    XSSFWorkbook compiled = TrialWorkbook.compiled(shorter, Trials.INCH);
    Findings findings = new TrialWorkbook(shorter, compiled).compare(brief);
    assertThrows(AssertionError.class, findings::requireAgreement);
    Difference found = findings.differences().get(0);
    assertEquals("no cell stitches_per_cm", found.where() + " " + found.name());
    assertEquals(1, findings.differences().size());
  }

  @Test
  void aNameMissingInTheWorkbookIsFound() throws IOException {
    XSSFWorkbook made = new XSSFWorkbook(new ByteArrayInputStream(PressedFile.of(brief)));
    made.removeName(made.getName("running_flat"));
    Findings findings = Comparison.of(Trials.TEMPLATE, brief, SheetValues.stored(made));
    assertEquals(
        List.of("running_flat"), findings.differences().stream().map(Difference::name).toList());
  }

  @Test
  void anErrorInACellWithoutNameIsFound() {
    XSSFWorkbook wrong = TrialWorkbook.compiled(Trials.TEMPLATE, Trials.INCH);
    wrong.getSheetAt(0).createRow(900).createCell(0).setCellFormula("1/0");
    Findings findings = new TrialWorkbook(Trials.TEMPLATE, wrong).compare(brief);
    assertThrows(AssertionError.class, findings::requireAgreement);
    assertEquals("Brief!A901 is #DIV/0!", findings.differences().get(0).where());
  }

  @Test
  void nothingToCompareIsNoAgreement() {
    WorkbookTemplate empty = new WorkbookTemplate("Nothing", Trials.TEMPLATE.phrases(), List.of());
    XSSFWorkbook compiled = TrialWorkbook.compiled(empty, Trials.INCH);
    SheetValues sheet = SheetValues.stored(compiled);
    Findings findings = Comparison.of(empty, brief, sheet);
    assertEquals(0, findings.cells());
    assertThrows(AssertionError.class, findings::requireAgreement);
    var told = assertThrows(AssertionError.class, Findings.NONE::requireAgreement);
    assertEquals("no cell was compared", told.getMessage());
  }

  @Test
  void manyCellsThatAgreeOnlyWithinRoundingAreNoAgreement() {
    Findings coarse = new Findings(1, 1000, 1, 0, List.of());
    assertThrows(AssertionError.class, coarse::requireAgreement);
  }
}
