package frillbook.calculation;

import org.apache.poi.xssf.usermodel.XSSFCell;

/** Puts a number, a text or nothing into a cell. */
public final class CellFill {
  private CellFill() {}

  public static void fill(XSSFCell cell, Object value) {
    if (value instanceof Double number) {
      cell.setCellValue(number);
    } else if (value instanceof String text) {
      cell.setCellValue(text);
    } else {
      cell.setBlank();
    }
  }
}
