package frillbook.workbook;

import java.util.List;
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
    this.rowRule = styles.putDxf(rowRule()) - 1L;
  }

  private static CTDxf alarm() {
    CTDxf style = CTDxf.Factory.newInstance();
    CTFont letters = style.addNewFont();
    letters.addNewB().setVal(true);
    letters.addNewColor().setRgb(Styles.opaque(Look.ALARM));
    return style;
  }

  private static CTDxf rowRule() {
    CTDxf style = CTDxf.Factory.newInstance();
    CTBorderPr bottom = style.addNewBorder().addNewBottom();
    bottom.setStyle(STBorderStyle.THIN);
    bottom.addNewColor().setRgb(Styles.opaque(Look.HAIRLINE));
    return style;
  }

  /**
   * Bold dark red letters while {@code condition} holds, written for the first of {@code cells};
   * the words themselves say what is wrong.
   */
  void addAlarm(XSSFSheet sheet, String condition, CellRangeAddress cells) {
    add(sheet.getCTWorksheet(), condition, cells, alarm);
  }

  /** A hairline under each of {@code cells} while {@code condition} holds for its row. */
  void addRowRule(XSSFSheet sheet, String condition, CellRangeAddress cells) {
    add(sheet.getCTWorksheet(), condition, cells, rowRule);
  }

  private static void add(CTWorksheet sheet, String condition, CellRangeAddress cells, long style) {
    CTConditionalFormatting formatting = sheet.addNewConditionalFormatting();
    formatting.setSqref(List.of(cells.formatAsString()));
    CTCfRule rule = formatting.addNewCfRule();
    rule.setType(STCfType.EXPRESSION);
    rule.setDxfId(style);
    rule.setPriority(sheet.sizeOfConditionalFormattingArray());
    rule.addFormula(condition);
  }
}
