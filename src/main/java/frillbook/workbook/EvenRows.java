package frillbook.workbook;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Says the height that most rows of a sheet have once. Only where no words wrap, since a program
 * may fit rows without a height of their own to what stands in them.
 */
final class EvenRows {
  private EvenRows() {}

  static void set(XSSFSheet sheet) {
    Map<Float, Long> heights =
        StreamSupport.stream(sheet.spliterator(), false)
            .filter(EvenRows::hasHeight)
            .collect(Collectors.groupingBy(Row::getHeightInPoints, Collectors.counting()));
    heights.entrySet().stream()
        .max(Map.Entry.<Float, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
        .ifPresent(most -> even(sheet, most.getKey()));
  }

  private static boolean hasHeight(Row row) {
    return ((XSSFRow) row).getCTRow().isSetHt();
  }

  private static void even(XSSFSheet sheet, float height) {
    sheet.setDefaultRowHeightInPoints(height);
    sheet.getCTWorksheet().getSheetFormatPr().setCustomHeight(true);
    for (Row row : sheet) {
      if (hasHeight(row) && row.getHeightInPoints() == height) {
        ((XSSFRow) row).getCTRow().unsetHt();
        ((XSSFRow) row).getCTRow().unsetCustomHeight();
      }
    }
  }
}
