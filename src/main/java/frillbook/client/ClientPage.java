package frillbook.client;

import frillbook.calculation.CellFill;
import frillbook.calculation.WorkbookValues;
import frillbook.chart.ChartCaches;
import frillbook.chart.ChartPlace;
import frillbook.look.NumberFormats;
import frillbook.look.TextMeasure;
import frillbook.template.Phrase;
import frillbook.template.Phrases;
import frillbook.wording.Wording;
import frillbook.workbook.Styles;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook of one sheet for the client: what the maker's sheet shows, as plain values.
 *
 * <p>It is written afresh, cell by cell, and not cut down from the maker's workbook: a part that
 * was never written cannot be left behind. No formula, name, comment or other sheet comes along; of
 * the pictures' sheet only the points that are drawn. The one name is the area to print. Words that
 * begin like a formula are marked as text, so that they stay text when they are edited.
 */
public final class ClientPage {
  private record Key(XSSFCellStyle style, boolean asTyped) {}

  /** What a spreadsheet program takes for the beginning of a formula. */
  private static final String FORMULA_STARTS = "=+-@";

  private static final double MARGIN_POINTS = 6;
  private static final double EMPTY_POINTS = 4;
  private static final double AIR = 4;

  private final XSSFSheet from;
  private final XSSFSheet to;
  private final ClientPoints points;
  private final int moneyPlaces;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();

  private ClientPage(XSSFSheet from, XSSFSheet to, int moneyPlaces, String pointsHead) {
    this.moneyPlaces = moneyPlaces;
    this.from = from;
    this.to = to;
    this.points = new ClientPoints(from.getWorkbook(), to, pointsHead);
  }

  /**
   * The page of {@code plan}, a workbook whose formulas have their values.
   *
   * @param sheet name of the sheet a client is given
   * @param phrases what it says of itself
   */
  public static XSSFWorkbook of(XSSFWorkbook plan, String sheet, Phrases phrases) {
    XSSFWorkbook page = new XSSFWorkbook();
    Styles.setDefaultFont(page);
    int places = moneyPlaces(new WorkbookValues(plan));
    String points = phrases.say(Phrase.PICTURE_POINTS);
    new ClientPage(plan.getSheet(sheet), page.createSheet(sheet), places, points).copy();
    ChartCaches.store(page);
    return page;
  }

  /** The page is for one currency and follows no other. */
  private static int moneyPlaces(WorkbookValues values) {
    return values.names().contains(Wording.MONEY_PLACES)
        ? ((Double) values.value(Wording.MONEY_PLACES)).intValue()
        : 2;
  }

  private void copy() {
    int columns = 0;
    for (int row = 0; row <= from.getLastRowNum(); row++) {
      if (from.getRow(row) != null) {
        copy(from.getRow(row), to.createRow(row));
        columns = Math.max(columns, from.getRow(row).getLastCellNum());
      }
    }
    IntStream.range(0, columns).forEach(c -> to.setColumnWidth(c, from.getColumnWidth(c)));
    from.getMergedRegions().forEach(to::addMergedRegion);
    from.getMergedRegions().forEach(this::fit);
    ChartPlace.on(from).forEach(this::copy);
    print();
    to.getWorkbook().setPrintArea(0, 0, columns - 1, 0, from.getLastRowNum());
  }

  /** The picture; its points come along as plain values. */
  private void copy(ChartPlace.Hung hung) {
    hung.place().hang(to, points.of(hung.chart().getCTChartSpace()));
  }

  /** Makes a paragraph's row as high as what it says now; one that says nothing shrinks. */
  private void fit(CellRangeAddress paragraph) {
    XSSFRow row = to.getRow(paragraph.getFirstRow());
    XSSFCell cell = row.getCell(paragraph.getFirstColumn());
    XSSFFont font = cell.getCellStyle().getFont();
    String text = cell.getStringCellValue();
    if (!font.getBold()) {
      double width =
          IntStream.rangeClosed(paragraph.getFirstColumn(), paragraph.getLastColumn())
              .mapToDouble(to::getColumnWidthInPixels)
              .sum();
      double room = Units.pixelToPoints(width) - MARGIN_POINTS;
      double height = TextMeasure.height(text, room, font.getFontHeightInPoints(), false);
      row.setHeightInPoints((float) (text.isEmpty() ? EMPTY_POINTS : Math.ceil(height) + AIR));
    }
  }

  private void copy(XSSFRow source, XSSFRow target) {
    target.setHeight(source.getHeight());
    source.forEach(cell -> copy((XSSFCell) cell, target.createCell(cell.getColumnIndex())));
  }

  private void copy(XSSFCell source, XSSFCell target) {
    Object value = WorkbookValues.stored(source);
    target.setCellStyle(style(new Key(source.getCellStyle(), looksLikeFormula(value))));
    if (!value.equals("")) {
      CellFill.fill(target, value);
    }
  }

  private static boolean looksLikeFormula(Object value) {
    return value instanceof String text
        && !text.isEmpty()
        && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
  }

  private XSSFCellStyle style(Key key) {
    return styles.computeIfAbsent(key, this::make);
  }

  private XSSFCellStyle make(Key key) {
    XSSFCellStyle copy = to.getWorkbook().createCellStyle();
    copy.cloneStyleFrom(key.style());
    if (NumberFormats.MONEY.equals(copy.getDataFormatString())) {
      setFormat(copy, NumberFormats.money(moneyPlaces));
    }
    if (key.asTyped()) {
      setFormat(copy, NumberFormats.AS_TYPED);
      copy.setQuotePrefixed(true);
    }
    return copy;
  }

  private void setFormat(XSSFCellStyle style, String format) {
    style.setDataFormat(to.getWorkbook().createDataFormat().getFormat(format));
  }

  private void print() {
    to.setDisplayGridlines(false);
    to.setFitToPage(true);
    to.getPrintSetup().setPaperSize(from.getPrintSetup().getPaperSize());
    to.getPrintSetup().setLandscape(from.getPrintSetup().getLandscape());
    to.getPrintSetup().setFitWidth((short) 1);
    to.getPrintSetup().setFitHeight((short) 1);
    for (PageMargin margin : PageMargin.values()) {
      to.setMargin(margin, from.getMargin(margin));
    }
  }
}
