package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.look.Span;
import frillbook.look.TextMeasure;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.template.InputTemplate;
import frillbook.template.Phrases;
import frillbook.template.SentenceTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.UnitText;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.CodeWords;
import frillbook.wording.Wording;
import java.util.Optional;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A sheet being written: cells with styles, merged stretches, row heights that fit. */
final class Page {
  private static final double POINTS_PER_PIXEL = 0.75;

  /** Width of a digit in the workbook's font, and the cell's own margins, in pixels. */
  private static final int DIGIT_PIXELS = 7;

  private static final int MARGIN_PIXELS = 5;

  private static final double INDENT_POINTS = 9;

  private final XSSFSheet sheet;
  private final SheetTemplate template;
  private final Styles styles;
  private final WorkbookSetting setting;
  private final WorkbookTemplate workbook;
  private final int first;
  private final int last;

  Page(
      XSSFSheet sheet,
      SheetTemplate template,
      Styles styles,
      WorkbookSetting setting,
      WorkbookTemplate workbook) {
    this(sheet, template, styles, setting, workbook, 0, template.widths().size() - 1);
  }

  private Page(
      XSSFSheet sheet,
      SheetTemplate template,
      Styles styles,
      WorkbookSetting setting,
      WorkbookTemplate workbook,
      int first,
      int last) {
    this.first = first;
    this.last = last;
    this.sheet = sheet;
    this.template = template;
    this.styles = styles;
    this.setting = setting;
    this.workbook = workbook;
  }

  /** The columns of the sheet from {@code first} to {@code last}, which count from 0 here. */
  Page columns(int first, int last) {
    return new Page(sheet, template, styles, setting, workbook, first, last);
  }

  XSSFSheet sheet() {
    return sheet;
  }

  /** The first of its columns on the sheet. */
  int firstColumn() {
    return first;
  }

  SheetTemplate template() {
    return template;
  }

  Styles styles() {
    return styles;
  }

  WorkbookSetting setting() {
    return setting;
  }

  /** What the workbook says of itself. */
  Phrases phrases() {
    return workbook.phrases();
  }

  /** How numbers of that kind are written on this sheet. */
  String format(ValueFormat format) {
    return template.isRead()
        ? NumberFormats.of(format, setting.unit(), phrases())
        : NumberFormats.working(format, setting.unit(), phrases());
  }

  /** Whether cells of that kind are inches of which conditional formats reduce the fractions. */
  boolean isReduced(ValueFormat format) {
    return format.isLength() && hasFractions();
  }

  /** Whether numbers of {@code format} in tables are shown as fractions where they are eighths. */
  boolean isAmount(ValueFormat format) {
    return format == ValueFormat.NUMBER && hasFractions();
  }

  private boolean hasFractions() {
    return setting.unit() == LengthUnit.INCH && template.isRead();
  }

  /** What is said where {@code input} cannot be used. */
  String refusal(InputTemplate input) {
    return setting.say(input.refusal(phrases(), setting.unit()));
  }

  /** The same beside the input. */
  String limits(InputTemplate input) {
    return setting.say(input.limits(phrases(), setting.unit()));
  }

  int lastColumn() {
    return last - first;
  }

  void setWidths() {
    for (int column = 0; column <= lastColumn(); column++) {
      double digits = pixels(column) / DIGIT_PIXELS;
      sheet.setColumnWidth(first + column, (int) Math.round(digits * 256));
    }
  }

  private double pixels(int column) {
    return template.widths().get(first + column) * DIGIT_PIXELS + MARGIN_PIXELS;
  }

  /** Of one column, in digits. */
  double widthOf(int column) {
    return template.widths().get(first + column);
  }

  /** Of all columns together, in points. */
  double width() {
    return width(0, lastColumn());
  }

  private double width(int from, int to) {
    double width = 0;
    for (int column = from; column <= to; column++) {
      width += pixels(column) * POINTS_PER_PIXEL;
    }
    return width;
  }

  XSSFCell cell(int row, int column, XSSFCellStyle style) {
    XSSFRow line = sheet.getRow(row);
    XSSFCell cell = (line == null ? sheet.createRow(row) : line).createCell(first + column);
    cell.setCellStyle(style);
    return cell;
  }

  XSSFCell text(int row, int column, String text, XSSFCellStyle style) {
    XSSFCell cell = cell(row, column, style);
    if (!text.isEmpty()) {
      cell.setCellValue(text);
    }
    return cell;
  }

  /** The unit beside the value of {@code name}. */
  void unit(int row, String name, String unit, XSSFCellStyle style) {
    unit(row, SheetPlaces.UNIT, UnitText.beside(name, unit), UnitText.isCalculated(unit), style);
  }

  /** A unit as written in the template; one of money by formula, since it follows the currency. */
  void unit(int row, int column, String unit, XSSFCellStyle style) {
    unit(row, column, UnitText.of(unit), UnitText.isMoney(unit), style);
  }

  private void unit(int row, int column, Wording wording, boolean calculated, XSSFCellStyle style) {
    if (calculated) {
      formula(row, column, new WordingFormula(setting, CodeWords.NONE).of(wording), style);
    } else {
      text(row, column, wording.say(name -> "", setting.unit()), style);
    }
  }

  XSSFCell formula(int row, int column, String formula, XSSFCellStyle style) {
    XSSFCell cell = cell(row, column, style);
    cell.setCellFormula(formula);
    return cell;
  }

  /** What {@code sentence} says, by formula; one that is the same in every plan as it is. */
  void sentence(
      int row,
      int column,
      SentenceTemplate sentence,
      FormulaTranslation formulas,
      XSSFCellStyle style) {
    if (sentence.isFixed()) {
      text(row, column, sentence.text().wording().say(name -> "", setting.unit()), style);
    } else {
      formula(row, column, formulas.sentence(sentence), style);
    }
  }

  /** Makes the cells {@code from} to {@code to} of a row one. */
  void merge(int row, int from, int to) {
    merge(row, row, from, to);
  }

  /** The same for several rows. */
  void merge(int row, int lastRow, int from, int to) {
    if (from < to || row < lastRow) {
      sheet.addMergedRegion(new CellRangeAddress(row, lastRow, first + from, first + to));
    }
  }

  /** Whether the sheet is one of those on paper. */
  boolean printed() {
    return template.printed();
  }

  /** Leads from a cell to another one of the workbook. */
  void link(int row, int column, Span target) {
    XSSFHyperlink link =
        sheet.getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    CellReference cell =
        new CellReference(target.sheet(), target.firstRow(), target.firstColumn(), false, false);
    link.setAddress(cell.formatAsString());
    sheet.getRow(row).getCell(first + column).setHyperlink(link);
  }

  /** Leads from a cell to {@code sheet}, if there is one. */
  void lead(int row, int column, Optional<String> sheet) {
    sheet.ifPresent(name -> link(row, column, Span.cell(name, 0, 0)));
  }

  /** The other sheet that {@code text} tells a reader to look at. */
  Optional<String> spokenOf(String text) {
    return workbook.spokenOf(text, template);
  }

  /**
   * The same of words that stand in a cell as they are, from {@code column} on: with a link in it
   * LibreOffice keeps them on one line and cuts off the rest.
   */
  Optional<String> spokenOfInOneLine(String text, int column, Look look) {
    double line = height("x", column, lastColumn(), look);
    return spokenOf(text).filter(sheet -> height(text, column, lastColumn(), look) == line);
  }

  /**
   * Makes the cells from {@code from} to the last column one. All have its style, so that its rule
   * goes to the end; in the background, which has thousands of them, only the first.
   */
  void mergeToEnd(int row, int from, Look look) {
    int styled = printed() ? lastColumn() : from;
    for (int column = from; column <= styled; column++) {
      XSSFRow line = sheet.getRow(row);
      if (line == null || line.getCell(first + column) == null) {
        cell(row, column, styles.of(look));
      }
    }
    merge(row, from, lastColumn());
  }

  /** Makes the row at least {@code points} high. */
  void heighten(int row, double points) {
    XSSFRow line = sheet.getRow(row);
    boolean untouched = !line.getCTRow().isSetHt();
    if (untouched || line.getHeightInPoints() < points) {
      line.setHeightInPoints((float) (Math.ceil(points * 4) / 4));
    }
  }

  /** Makes the row high enough for {@code text} wrapped in the columns from…to. */
  void fit(int row, String text, int from, int to, Look look) {
    heighten(row, height(text, from, to, look));
  }

  private double height(String text, int from, int to, Look look) {
    double room = width(from, to) - MARGIN_PIXELS - INDENT_POINTS * look.indent();
    return TextMeasure.height(text, room, look.size(), look.bold());
  }
}
