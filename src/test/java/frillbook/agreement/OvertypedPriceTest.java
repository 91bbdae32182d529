package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.calculation.WorkbookValues;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a maker sees who unlocks the sheet Money and types a number over a formula. */
final class OvertypedPriceTest {
  /** Fails by no input: a formula must be gone. */
  static final String CHECK = "price_is_untouched";

  /** Compiled once; the formula that is typed over is put back. */
  private static final XSSFWorkbook WORKBOOK = TrialWorkbook.compiled(Trials.TEMPLATE, Trials.INCH);

  private static WorkbookValues typedOver(String line, double value) {
    XSSFCell cell = SheetValues.stored(WORKBOOK).cells(line).get(0);
    String formula = cell.getCellFormula();
    cell.removeFormula();
    cell.setCellValue(value);
    WorkbookValues values = new WorkbookValues(WORKBOOK);
    values.recalculate();
    cell.setCellFormula(formula);
    return values;
  }

  @ParameterizedTest
  @ValueSource(strings = {"net_each", "price_each", "price_total"})
  void aPriceThatIsTypedOverIsNoticed(String line) {
    WorkbookValues values = typedOver(line, 99);
    assertEquals(2.0, values.value(CHECK), line);
    assertEquals("LOOK AGAIN", values.value("check_flag"), line);
  }
}
