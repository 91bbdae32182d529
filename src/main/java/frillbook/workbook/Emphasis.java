package frillbook.workbook;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.SheetConditionalFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Looks that depend on values: a sentence that must be read, a rule under a row that is filled. */
final class Emphasis {
  private Emphasis() {}

  /**
   * Bold dark red letters while {@code condition} holds; the words themselves say what is wrong.
   */
  static void addAlarm(XSSFSheet sheet, String condition, CellRangeAddress cells) {
    SheetConditionalFormatting formatting = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule = formatting.createConditionalFormattingRule(condition);
    var letters = rule.createFontFormatting();
    letters.setFontStyle(false, true);
    letters.setFontColor(Styles.colour(Look.ALARM));
    formatting.addConditionalFormatting(new CellRangeAddress[] {cells}, rule);
  }

  /** A hairline under each of {@code cells} while {@code condition} holds for its row. */
  static void addRowRule(XSSFSheet sheet, String condition, CellRangeAddress cells) {
    SheetConditionalFormatting formatting = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule = formatting.createConditionalFormattingRule(condition);
    var border = rule.createBorderFormatting();
    border.setBorderBottom(BorderStyle.THIN);
    border.setBottomBorderColor(Styles.colour(Look.HAIRLINE));
    formatting.addConditionalFormatting(new CellRangeAddress[] {cells}, rule);
  }
}
