package frillbook.workbook;

import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Prints every sheet as far as it shows something, with room for a page more.
 *
 * <p>A table has rows for the largest plan; most are blank, and a program prints blank formulas as
 * blank pages. A print area that is itself a formula would follow the plan, but LibreOffice prints
 * the whole sheet then. So the area is settled when the workbook is made: it ends where the last
 * value or chart stands, rounded up to a whole number of {@value #ROOM} rows.
 */
final class PrintAreas {
  /** About a page. */
  private static final int ROOM = 40;

  private PrintAreas() {}

  /** Sets the print areas of a workbook whose formulas have their values. */
  static void set(XSSFWorkbook workbook) {
    for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
      set(workbook, index);
    }
  }

  private static void set(XSSFWorkbook workbook, int index) {
    XSSFSheet sheet = workbook.getSheetAt(index);
    int end = sheet.getLastRowNum();
    int shown = Math.max(lastShownRow(sheet), lastChartRow(sheet));
    int last = Math.min(end, (shown / ROOM + 1) * ROOM - 1);
    if (last < end) {
      workbook.setPrintArea(index, 0, lastColumn(sheet), 0, last);
    }
  }

  private static int lastShownRow(XSSFSheet sheet) {
    return IntStream.iterate(sheet.getLastRowNum(), row -> row > 0, row -> row - 1)
        .filter(row -> isShown(sheet.getRow(row)))
        .findFirst()
        .orElse(0);
  }

  private static int lastChartRow(XSSFSheet sheet) {
    return ChartPlace.on(sheet).stream()
        .mapToInt(hung -> hung.place().lastRow(sheet))
        .max()
        .orElse(0);
  }

  private static boolean isShown(XSSFRow row) {
    return row != null
        && IntStream.range(0, row.getLastCellNum())
            .mapToObj(row::getCell)
            .anyMatch(cell -> cell != null && isShown(cell));
  }

  private static boolean isShown(XSSFCell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return type == CellType.STRING ? !cell.getStringCellValue().isEmpty() : type != CellType.BLANK;
  }

  private static int lastColumn(XSSFSheet sheet) {
    return IntStream.rangeClosed(0, sheet.getLastRowNum())
        .mapToObj(sheet::getRow)
        .filter(row -> row != null)
        .mapToInt(row -> row.getLastCellNum() - 1)
        .max()
        .orElse(0);
  }
}
