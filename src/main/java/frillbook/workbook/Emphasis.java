package frillbook.workbook;

import frillbook.look.Look;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBorderPr;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCfRule;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFont;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STBorderStyle;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCfType;

/**
 * Looks that depend on values: a sentence that must be read, a rule under a row that is filled.
 *
 * <p>Written in the terms of the schema (ISO/IEC 29500-1, 18.3.1.18): the library's own rules make
 * a style of their own each time, with a colour the schema refuses.
 */
final class Emphasis {
  private final long alarm;
  private final long rowRule;

  Emphasis(XSSFWorkbook workbook) {
    StylesTable styles = workbook.getStylesSource();
    // The table answers with the number of styles, one more than the new one's index.
    this.alarm = styles.putDxf(alarm()) - 1L;
    this.rowRule = styles.putDxf(underlined()) - 1L;
  }

  private static CTDxf alarm() {
    CTDxf style = CTDxf.Factory.newInstance();
    CTFont letters = style.addNewFont();
    letters.addNewB().setVal(true);
    letters.addNewColor().setRgb(Styles.opaque(Look.ALARM));
    return style;
  }

  private static CTDxf underlined() {
    CTDxf style = CTDxf.Factory.newInstance();
    underline(style);
    return style;
  }

  /** Puts a hairline under what has {@code style}. */
  static void underline(CTDxf style) {
    CTBorderPr bottom = style.addNewBorder().addNewBottom();
    bottom.setStyle(STBorderStyle.THIN);
    bottom.addNewColor().setRgb(Styles.opaque(Look.HAIRLINE));
  }

  /**
   * Bold dark red letters while {@code condition} holds, written for the first of {@code cells};
   * the words themselves say what is wrong.
   */
  void addAlarm(XSSFSheet sheet, String condition, CellRangeAddress cells) {
    add(sheet, List.of(cells), Map.of(condition, alarm));
  }

  /** The style of a row that is filled: a hairline under it. */
  long rowRule() {
    return rowRule;
  }

  /**
   * Rules for the same cells, the first of them that holds before the others; none without cells.
   *
   * @param styles by condition, which is written for the first cell
   */
  static void add(XSSFSheet sheet, List<CellRangeAddress> cells, Map<String, Long> styles) {
    if (cells.isEmpty()) {
      return;
    }
    CTWorksheet worksheet = sheet.getCTWorksheet();
    int priority = rules(worksheet);
    CTConditionalFormatting formatting = worksheet.addNewConditionalFormatting();
    formatting.setSqref(cells.stream().map(CellRangeAddress::formatAsString).toList());
    for (Map.Entry<String, Long> style : styles.entrySet()) {
      CTCfRule rule = formatting.addNewCfRule();
      rule.setType(STCfType.EXPRESSION);
      rule.setDxfId(style.getValue());
      rule.setPriority(++priority);
      rule.addFormula(style.getKey());
    }
  }

  private static int rules(CTWorksheet sheet) {
    return sheet.getConditionalFormattingList().stream()
        .mapToInt(CTConditionalFormatting::sizeOfCfRuleArray)
        .sum();
  }
}
