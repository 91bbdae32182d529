package frillbook.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** SUMPRODUCT over 1, 2, 3 with the weights 10, 20, 30; worked out by hand. */
final class CellByCellTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "SUMPRODUCT((counts>1)*1); 2",
        "SUMPRODUCT((counts>1)*weights); 50",
        "SUMPRODUCT(counts,weights); 140",
        "SUMPRODUCT((counts>SQRT(1))*(weights-one)); 48",
        "IF(one=1,SUMPRODUCT((counts<3)*weights),7); 30",
        "IF(one=2,SUMPRODUCT((counts<3)*weights),7); 7",
        "IF(one=2,7,SUMPRODUCT((counts<3)*weights)); 30",
        "IF(one=1,IF(one=2,SUMPRODUCT(counts),SUMPRODUCT((counts=3)*1)),5)+100; 101",
        "SUMPRODUCT((counts=IF(one=1,2,3))*weights)+IF(one=1,1000,2000); 1020"
      })
  void calculatedRangesAreMultipliedCellByCell(String formula, double expected) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      var sheet = workbook.createSheet("S");
      for (int row = 0; row < 3; row++) {
        sheet.createRow(row).createCell(0).setCellValue(row + 1);
        sheet.getRow(row).createCell(1).setCellValue(10 * (row + 1));
      }
      name(workbook, "counts", "S!$A$1:$A$3");
      name(workbook, "weights", "S!$B$1:$B$3");
      name(workbook, "one", "S!$A$1");
      XSSFCell cell = sheet.createRow(9).createCell(0);
      cell.setCellFormula(formula);
      WorkbookValues values = new WorkbookValues(workbook);
      values.recalculate();
      assertEquals(expected, values.value(cell), formula);
    }
  }

  private static void name(XSSFWorkbook workbook, String text, String cells) {
    XSSFName name = workbook.createName();
    name.setNameName(text);
    name.setRefersToFormula(cells);
  }
}
