package frillbook.workbook;

import frillbook.template.ColumnTemplate;
import frillbook.template.ValueFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Underlines the rows of a table that are filled, where they are read on paper, and sets the
 * formats of its columns of money, of inches and, beside inches, of amounts. Some programs take the
 * first rule that holds for a cell, others the last stretch of rules that has it: so no two
 * stretches share a cell, and a rule for a format underlines too.
 *
 * @param rowRule style of a row that is filled
 */
record RowPlaces(MoneyPlaces money, LengthPlaces lengths, long rowRule) {

  /**
   * @param first row of the data, from 0
   * @param rows of data
   */
  void set(Page page, List<ColumnTemplate> columns, int first, int rows) {
    XSSFSheet sheet = page.sheet();
    int left = page.firstColumn();
    String filled = new CellReference(first, left, false, true).formatAsString() + "<>\"\"";
    Predicate<ValueFormat> isLength = page::isReduced;
    Predicate<ValueFormat> isMoney = ValueFormat.MONEY::equals;
    add(sheet, filled, cells(columns, left, first, rows, isMoney), money.ofRows(filled));
    List<CellRangeAddress> inches = cells(columns, left, first, rows, isLength);
    if (!inches.isEmpty()) {
      add(sheet, filled, inches, lengths.ofRows(filled, inches.get(0)));
    }
    Predicate<ValueFormat> isAmount = page::isAmount;
    List<CellRangeAddress> amounts = cells(columns, left, first, rows, isAmount);
    if (!amounts.isEmpty()) {
      add(sheet, filled, amounts, lengths.ofAmounts(filled, amounts.get(0)));
    }
    if (page.printed()) {
      add(
          sheet,
          filled,
          cells(columns, left, first, rows, isMoney.or(isLength).or(isAmount).negate()),
          Map.of());
    }
  }

  private void add(
      XSSFSheet sheet, String filled, List<CellRangeAddress> cells, Map<String, Long> formats) {
    Map<String, Long> rules = new LinkedHashMap<>(formats);
    rules.put(filled, rowRule);
    Emphasis.add(sheet, cells, rules);
  }

  private static List<CellRangeAddress> cells(
      List<ColumnTemplate> columns, int left, int first, int rows, Predicate<ValueFormat> which) {
    int last = first + rows - 1;
    List<CellRangeAddress> cells = new ArrayList<>();
    int place = left;
    for (ColumnTemplate column : columns) {
      int end = place + column.span() - 1;
      if (which.test(column.format())) {
        Emphasis.join(cells, new CellRangeAddress(first, last, place, end));
      }
      place = end + 1;
    }
    return cells;
  }
}
