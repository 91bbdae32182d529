package frillbook.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import frillbook.calculation.WorkbookValues;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.Written;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/**
 * A table of three rows, two of them filled, whose second column is two wide. Title and line stand
 * in rows 1 and 2, its head in 3 and 4, so its rows are 5 to 7, and its boxes are in E to G.
 */
final class TickBoxesTest {
  private static final String ROWS =
      """
        - line: people
          label: L
          unit: "-"
          format: count
          guard: none
          formula: "2"
          note: N.
        - table: turns
          rows: 3
          guard: none
          show: "{n}<3"
          row_height: 30
          boxes: {label: Done, most: 3, count: people}
          columns:
            - {column: turn, label: T, unit: "-", format: count, formula: "{n}", note: N.}
            - {column: twice, label: T, unit: "-", format: count, span: 2, formula: "2*[turn]", note: N.}
            - {column: more, label: M, unit: "-", format: count, size: large, formula: "[twice]+1", note: N.}
      """;

  private final XSSFWorkbook workbook = compiled();
  private final XSSFSheet sheet = workbook.getSheet("A");

  private static XSSFWorkbook compiled() {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(
            workbook, Written.read(ROWS), new WorkbookSetting(LengthUnit.INCH, Map.of(), Paper.A4));
    return workbook;
  }

  private List<CellRangeAddress> rules(String cell) {
    XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(workbook);
    evaluator.evaluateAll();
    return new ConditionalFormattingEvaluator(workbook, evaluator)
        .getConditionalFormattingForCell(new CellReference("A!" + cell)).stream()
            .flatMap(rule -> Stream.of(rule.getRegions()))
            .toList();
  }

  private boolean isFramed(String cell) {
    return !rules(cell).isEmpty();
  }

  @Test
  void whatStandsBehindAWideColumnSpeaksOfIt() {
    WorkbookValues values = new WorkbookValues(workbook);
    values.recalculate();
    assertEquals(List.of(3.0, 5.0, ""), values.column("more"));
    assertEquals("A!$D$5:$D$7", workbook.getName("more").getRefersToFormula());
    assertEquals(
        List.of("B3:C3", "B4:C4", "B5:C5", "B6:C6", "B7:C7", "E3:G3"),
        sheet.getMergedRegions().stream()
            .filter(cells -> cells.getFirstRow() > 1)
            .map(CellRangeAddress::formatAsString)
            .sorted()
            .toList());
  }

  @Test
  void rowsHaveTheirHeight() {
    assertEquals(30, sheet.getRow(4).getHeightInPoints());
  }

  @Test
  void aListOffersATickForABox() {
    assertFalse(sheet.getRow(4).getCell(6).getCellStyle().getLocked());
    List<? extends DataValidation> rules = sheet.getDataValidations();
    assertEquals(1, rules.size());
    assertEquals("\"x\"", rules.get(0).getValidationConstraint().getFormula1());
    assertEquals("E5:G7", rules.get(0).getRegions().getCellRangeAddresses()[0].formatAsString());
  }

  /** Two people, two rows. */
  @Test
  void asManyBoxesAreFramedAsAreAskedFor() {
    assertEquals(
        List.of(true, true, false), Stream.of("E5", "F5", "G5").map(this::isFramed).toList());
    assertEquals(List.of(true, false), Stream.of("F6", "F7").map(this::isFramed).toList());
  }

  /** The rule for the head hides it. */
  @Test
  void theNumberOfABoxThatIsNotUsedIsHidden() {
    assertEquals(3, sheet.getRow(3).getCell(6).getNumericCellValue());
    assertEquals(
        List.of(false, true), Stream.of("F4", "G4").map(cell -> !rules(cell).isEmpty()).toList());
  }
}
