package frillbook.workbook;

import frillbook.look.NumberFormats;
import frillbook.template.LineTemplate;
import frillbook.template.ValueFormat;
import frillbook.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  MoneyPlaces(XSSFWorkbook workbook) {
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
        Emphasis.join(cells, new CellRangeAddress(row, row, SheetPlaces.VALUE, SheetPlaces.VALUE));
      }
    }
    Map<String, Long> rules = new LinkedHashMap<>();
    ofLines.forEach((places, style) -> rules.put(are(places), style));
    Emphasis.add(sheet, cells, rules);
  }

  /**
   * The rules for cells of money in a table, each of which underlines its row.
   *
   * @param filled holds in a row that is
   */
  Map<String, Long> ofRows(String filled) {
    Map<String, Long> rules = new LinkedHashMap<>();
    ofRows.forEach((places, style) -> rules.put("AND(" + filled + "," + are(places) + ")", style));
    return rules;
  }

  private static String are(int places) {
    return Wording.MONEY_PLACES + "=" + places;
  }
}
