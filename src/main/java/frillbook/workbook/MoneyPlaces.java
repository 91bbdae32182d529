package frillbook.workbook;

import frillbook.look.NumberFormats;
import frillbook.template.LineTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.ValueFormat;
import frillbook.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;

/**
 * Shows money with the places of its currency, which a person may change: two by the cells' own
 * format, any other number by a conditional one.
 */
public final class MoneyPlaces {
  /** ISO 4217 has no others. */
  private static final List<Integer> UNUSUAL = List.of(0, 3, 4);

  private final Map<Integer, Long> ofLines = new LinkedHashMap<>();
  private final Map<Integer, Long> ofRows = new LinkedHashMap<>();
  private final long rowRule;

  /**
   * @param rowRule style of a row that is filled
   */
  MoneyPlaces(XSSFWorkbook workbook, long rowRule) {
    this.rowRule = rowRule;
    StylesTable styles = workbook.getStylesSource();
    for (int places : UNUSUAL) {
      CTDxf line = Emphasis.numbers(styles, NumberFormats.money(places));
      CTDxf row = Emphasis.numbers(styles, NumberFormats.money(places));
      Emphasis.underline(row);
      ofLines.put(places, Emphasis.put(styles, line));
      ofRows.put(places, Emphasis.put(styles, row));
    }
  }

  /** Sets the format of every line of money on a sheet. */
  void setLines(XSSFSheet sheet, List<SheetPlaces.Placed> entries) {
    List<CellRangeAddress> cells = new ArrayList<>();
    for (SheetPlaces.Placed placed : entries) {
      if (placed.entry() instanceof LineTemplate line && line.format() == ValueFormat.MONEY) {
        int row = placed.row();
        join(cells, new CellRangeAddress(row, row, SheetPlaces.VALUE, SheetPlaces.VALUE));
      }
    }
    Map<String, Long> rules = new LinkedHashMap<>();
    ofLines.forEach((places, style) -> rules.put(are(places), style));
    Emphasis.add(sheet, cells, rules);
  }

  /**
   * Underlines the rows of a table that are filled, and sets the format of its columns of money.
   * Some programs take the first rule that holds for a cell, others the last stretch of rules that
   * has it: so no two stretches share a cell, and a rule for the format underlines too.
   *
   * @param first row of its data, from 0
   */
  void setTable(XSSFSheet sheet, TableTemplate table, int first) {
    String filled = "$A" + (first + 1) + "<>\"\"";
    Map<String, Long> rules = new LinkedHashMap<>();
    ofRows.forEach((places, style) -> rules.put("AND(" + filled + "," + are(places) + ")", style));
    rules.put(filled, rowRule);
    Emphasis.add(sheet, columns(table, first, ValueFormat.MONEY::equals), rules);
    Emphasis.add(
        sheet, columns(table, first, f -> f != ValueFormat.MONEY), Map.of(filled, rowRule));
  }

  private static List<CellRangeAddress> columns(
      TableTemplate table, int first, Predicate<ValueFormat> which) {
    int last = first + table.rows() - 1;
    List<CellRangeAddress> cells = new ArrayList<>();
    IntStream.range(0, table.columns().size())
        .filter(column -> which.test(table.columns().get(column).format()))
        .forEach(column -> join(cells, new CellRangeAddress(first, last, column, column)));
    return cells;
  }

  private static String are(int places) {
    return Wording.MONEY_PLACES + "=" + places;
  }

  /** Adds cells to the last area where they go on with it, else as one of their own. */
  private static void join(List<CellRangeAddress> areas, CellRangeAddress next) {
    CellRangeAddress last = areas.isEmpty() ? next : areas.get(areas.size() - 1);
    if (last.getLastRow() + 1 == next.getFirstRow()) {
      last.setLastRow(next.getLastRow());
    } else if (last.getLastColumn() + 1 == next.getFirstColumn()) {
      last.setLastColumn(next.getLastColumn());
    } else {
      areas.add(next);
    }
  }
}
