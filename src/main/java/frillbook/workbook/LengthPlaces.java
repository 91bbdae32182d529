package frillbook.workbook;

import frillbook.look.NumberFormats;
import frillbook.measure.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.ValueFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;

/**
 * Shows inches as a tape does, 19 7/8 and 19 1/2. No format alone takes a fraction to its lowest
 * terms: so a cell's own has eighths, and conditional ones have the others.
 */
final class LengthPlaces {
  /** The sixteenths of a length as sentences say it. */
  private static final String SAID =
      "IF(OR(%1$s<4,MOD(ROUND(%1$s*16,4),1)=0),ROUND(%1$s*16,0),2*ROUND(%1$s*8,0))";

  /** What was typed is shown to the last digit, so that nobody doubts what counts. */
  private static final String TYPED = "ROUND(%1$s*16,4)";

  private static final String WHOLE = "MOD(%s,16)=0";
  private static final String HALVES = "MOD(%s,8)=0";
  private static final String QUARTERS = "MOD(%s,4)=0";
  private static final String EIGHTHS = "MOD(%s,2)=0";
  private static final String SIXTEENTHS = "MOD(%s,2)=1";

  private final Map<String, Long> ofLines = new LinkedHashMap<>();
  private final Map<String, Long> ofOthers = new LinkedHashMap<>();
  private final Map<String, Long> ofRows = new LinkedHashMap<>();
  private final Map<String, Long> ofAmounts = new LinkedHashMap<>();
  private final Map<String, Long> ofInputs = new LinkedHashMap<>();

  LengthPlaces(XSSFWorkbook workbook) {
    StylesTable styles = workbook.getStylesSource();
    Map<String, String> said = new LinkedHashMap<>();
    said.put(WHOLE, "0");
    said.put(HALVES, "# ?/2");
    said.put(QUARTERS, "# ?/4");
    Map<String, String> typed = new LinkedHashMap<>(said);
    said.put(SIXTEENTHS, "# ??/16");
    typed.put(EIGHTHS, NumberFormats.EIGHTHS);
    said.forEach(
        (fits, format) -> {
          String condition = String.format(fits, SAID);
          CTDxf row = Emphasis.numbers(styles, format);
          Emphasis.underline(row);
          ofLines.put(condition, Emphasis.put(styles, Emphasis.numbers(styles, format)));
          ofOthers.put(
              condition,
              Emphasis.put(styles, Emphasis.numbers(styles, format + NumberFormats.INCHES)));
          ofRows.put(condition, Emphasis.put(styles, row));
        });
    typed.forEach(
        (fits, format) -> {
          String condition = String.format(fits, TYPED);
          CTDxf row = Emphasis.numbers(styles, format);
          Emphasis.underline(row);
          ofInputs.put(condition, Emphasis.put(styles, Emphasis.numbers(styles, format)));
          ofAmounts.put(condition, Emphasis.put(styles, row));
        });
  }

  /** Sets the formats of the inputs and lines of a sheet; a cm workbook has inches beside lines. */
  void set(Page page, List<SheetPlaces.Placed> entries) {
    XSSFSheet sheet = page.sheet();
    if (page.setting().unit() == LengthUnit.INCH) {
      set(sheet, entries, LengthPlaces::isInput, SheetPlaces.VALUE, ofInputs);
      set(sheet, entries, each -> isReduced(each, page), SheetPlaces.VALUE, ofLines);
    } else {
      set(sheet, entries, LengthPlaces::hasOther, SheetPlaces.OTHER_UNIT, ofOthers);
    }
  }

  private static boolean isInput(RowTemplate entry) {
    return entry instanceof InputTemplate input && input.kind() == InputKind.LENGTH;
  }

  private static boolean isReduced(RowTemplate entry, Page page) {
    return entry instanceof LineTemplate line
        && line.isOnTape(page.setting().unit())
        && page.isReduced(ValueFormat.LENGTH);
  }

  private static boolean hasOther(RowTemplate entry) {
    return entry instanceof LineTemplate line
        && line.also()
        && line.format().isLength()
        && line.longSaid().isEmpty();
  }

  private static void set(
      XSSFSheet sheet,
      List<SheetPlaces.Placed> entries,
      Predicate<RowTemplate> which,
      int column,
      Map<String, Long> rules) {
    List<CellRangeAddress> cells = new ArrayList<>();
    for (SheetPlaces.Placed placed : entries) {
      if (which.test(placed.entry())) {
        int row = placed.row();
        Emphasis.join(cells, new CellRangeAddress(row, row, column, column));
      }
    }
    if (!cells.isEmpty()) {
      Emphasis.add(sheet, cells, of(cell(cells.get(0)), rules));
    }
  }

  /** The rules for cells of a table, the first of them {@code first}; each underlines its row. */
  Map<String, Long> ofRows(String filled, CellRangeAddress first) {
    return ofRows(filled, first, ofRows);
  }

  /** The same for amounts: 14 3/4 yd as a shop cuts them, 9 bags; what is no eighth as it is. */
  Map<String, Long> ofAmounts(String filled, CellRangeAddress first) {
    return ofRows(filled, first, ofAmounts);
  }

  private static Map<String, Long> ofRows(
      String filled, CellRangeAddress first, Map<String, Long> formats) {
    Map<String, Long> rules = new LinkedHashMap<>();
    of(cell(first), formats)
        .forEach((fits, style) -> rules.put("AND(" + filled + "," + fits + ")", style));
    return rules;
  }

  private static Map<String, Long> of(String cell, Map<String, Long> rules) {
    Map<String, Long> said = new LinkedHashMap<>();
    rules.forEach((condition, style) -> said.put(String.format(condition, cell), style));
    return said;
  }

  /** As seen from itself: the rules of the cells beside and below it speak of those. */
  private static String cell(CellRangeAddress area) {
    return new CellReference(area.getFirstRow(), area.getFirstColumn()).formatAsString();
  }
}
