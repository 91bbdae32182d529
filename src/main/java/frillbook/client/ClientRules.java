package frillbook.client;

import frillbook.calculation.WorkbookValues;
import frillbook.workbook.Emphasis;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFBorderFormatting;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormatting;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Rules and bars that the maker's sheet draws while a value is above 0; here they are drawn. */
record ClientRules(XSSFSheet maker, WorkbookValues values) {

  /** What is drawn about {@code cell}; nothing where its condition does not hold. */
  Optional<XSSFConditionalFormattingRule> about(XSSFCell cell) {
    return all()
        .filter(each -> covers(each, cell))
        .map(each -> each.getRule(0))
        .filter(rule -> Emphasis.ruledBy(rule.getFormula1()).filter(this::isAbove).isPresent())
        .findFirst();
  }

  private Stream<XSSFConditionalFormatting> all() {
    var every = maker.getSheetConditionalFormatting();
    return IntStream.range(0, every.getNumConditionalFormattings())
        .mapToObj(every::getConditionalFormattingAt);
  }

  private static boolean covers(XSSFConditionalFormatting rules, XSSFCell cell) {
    return Stream.of(rules.getFormattingRanges()).anyMatch(range -> range.isInRange(cell));
  }

  private boolean isAbove(String name) {
    return values.value(name) instanceof Double number && number > 0;
  }

  /** Draws the same with {@code style}. */
  static void draw(XSSFConditionalFormattingRule rule, XSSFCellStyle style) {
    if (rule.getBorderFormatting() != null) {
      draw(rule.getBorderFormatting(), style);
    }
    var pattern = rule.getPatternFormatting();
    if (pattern != null) {
      style.setFillForegroundColor(pattern.getFillBackgroundColorColor());
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
  }

  private static void draw(XSSFBorderFormatting of, XSSFCellStyle style) {
    style.setBorderLeft(of.getBorderLeft());
    style.setBorderRight(of.getBorderRight());
    style.setBorderTop(of.getBorderTop());
    style.setBorderBottom(of.getBorderBottom());
    if (of.getBorderLeft() != BorderStyle.NONE) {
      style.setLeftBorderColor(of.getLeftBorderColorColor());
      style.setRightBorderColor(of.getRightBorderColorColor());
    }
    if (of.getBorderTop() != BorderStyle.NONE) {
      style.setTopBorderColor(of.getTopBorderColorColor());
    }
    if (of.getBorderBottom() != BorderStyle.NONE) {
      style.setBottomBorderColor(of.getBottomBorderColorColor());
    }
  }
}
