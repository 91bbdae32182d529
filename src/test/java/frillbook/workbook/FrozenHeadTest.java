package frillbook.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.chart.Bunting;
import frillbook.measure.LengthUnit;
import org.apache.poi.ss.util.PaneInformation;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rows that stay while the others go by. */
final class FrozenHeadTest {
  private static final XSSFWorkbook WORKBOOK = Bunting.compiled(LengthUnit.INCH);

  /**
   * Counted in the templates: Brief has a title and a lead; Flag by flag a title, a note, and the
   * labels and units of its one table; Checks a title; Words a title and the head of its list.
   */
  @ParameterizedTest
  @CsvSource({"Brief, 2", "Flag by flag, 4", "Checks, 1", "Words, 2"})
  void theHeadStays(String sheet, int rows) {
    PaneInformation pane = WORKBOOK.getSheet(sheet).getPaneInformation();
    assertEquals(rows, pane.getHorizontalSplitPosition());
  }
}
