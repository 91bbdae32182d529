package frillbook.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** What formulas of neighbouring cells come to, by hand; each is written into its own cell. */
final class CellFormulasTest {
  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final XSSFSheet sheet = workbook.createSheet("Mine");

  /** Numbers in column A, under a heading: 3, 5 and 7 in rows 2 to 4, and formulas beside them. */
  private List<Object> calculated(String... formulas) {
    sheet.createRow(0).createCell(0).setCellValue("yards");
    for (int row = 1; row <= formulas.length; row++) {
      sheet.createRow(row).createCell(0).setCellValue(2 * row + 1);
      sheet.getRow(row).createCell(2).setCellFormula(formulas[row - 1]);
    }
    WorkbookValues values = new WorkbookValues(workbook);
    values.recalculate();
    return values.formulaCells().stream().map(values::value).toList();
  }

  @Test
  void aFormulaThatIsFilledDownFollowsItsRow() {
    assertEquals(List.of(6.0, 10.0, 14.0), calculated("2*A2", "2*A3", "2*A4"));
  }

  @Test
  void aRowThatIsFixedStays() {
    assertEquals(List.of(9.0, 15.0, 21.0), calculated("A$2*A2", "A$2*A3", "A$2*A4"));
  }

  @Test
  void aFormulaThatIsTheSameInEveryRowReadsTheSameCell() {
    assertEquals(List.of(3.0, 3.0, 3.0), calculated("A2", "A2", "A2"));
  }

  @Test
  void cellsOfAnotherSheetAreThoseThatAreNamed() {
    XSSFSheet other = workbook.createSheet("Other");
    for (int row = 1; row <= 3; row++) {
      other.createRow(row).createCell(0).setCellValue(100 * row);
    }
    assertEquals(
        List.of(100.0, 200.0, 300.0), calculated("Other!A2+0", "Other!A3+0", "Other!A4+0"));
  }

  /** A name may look like a cell beyond the last column, which is XFD. */
  @Test
  void namesThatLookLikeCellsAreNames() {
    for (int row = 2; row <= 4; row++) {
      var name = workbook.createName();
      name.setNameName("ZIP" + row);
      name.setRefersToFormula("Mine!$A$" + (6 - row));
    }
    assertEquals(List.of(7.0, 5.0, 3.0), calculated("ZIP2+0", "ZIP3+0", "ZIP4+0"));
  }

  @Test
  void aColumnOfATableIsReadInTheFormulasOwnRow() {
    String own = "2*Yards[[#This Row],[yards]]";
    sheet.createRow(0).createCell(0).setCellValue("yards");
    var table = sheet.createTable(new AreaReference("A1:A4", SpreadsheetVersion.EXCEL2007));
    table.setName("Yards");
    table.setDisplayName("Yards");
    table.getCTTable().getTableColumns().getTableColumnArray(0).setName("yards");
    table.updateHeaders();
    assertEquals(List.of(6.0, 10.0, 14.0), calculated(own, own, own));
  }
}
