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
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
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
  /** What a cell looks like: as the maker's does, but for rules by condition. */
  private record Key(
      XSSFCellStyle style,
      boolean asTyped,
      boolean wraps,
      Optional<XSSFConditionalFormattingRule> rule) {}

  /** Letters that would get smaller than this share are wrapped in place of it. */
  private static final double LEAST_SHRUNK = 0.7;

  /** What a spreadsheet program takes for the beginning of a formula. */
  private static final String FORMULA_STARTS = "=+-@";

  private static final double MARGIN_POINTS = 6;
  private static final double EMPTY_POINTS = 4;
  private static final double INDENT_POINTS = 9;

  private final XSSFSheet from;
  private final XSSFSheet to;
  private final ClientPoints points;
  private final ClientRules rules;
  private final ClientStyle looks;
  private final int moneyPlaces;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
  private final Map<CellAddress, CellRangeAddress> merged = new HashMap<>();

  private ClientPage(XSSFSheet from, XSSFSheet to, WorkbookValues values, String pointsHead) {
    this.moneyPlaces = moneyPlaces(values);
    this.rules = new ClientRules(from, values);
    this.from = from;
    this.to = to;
    this.looks = new ClientStyle(from.getWorkbook(), to.getWorkbook());
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
    WorkbookValues values = new WorkbookValues(plan);
    String points = phrases.say(Phrase.PICTURE_POINTS);
    new ClientPage(plan.getSheet(sheet), page.createSheet(sheet), values, points).copy();
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
    from.getMergedRegions()
        .forEach(
            cells ->
                merged.put(new CellAddress(cells.getFirstRow(), cells.getFirstColumn()), cells));
    IntStream.range(0, columns()).forEach(c -> to.setColumnWidth(c, from.getColumnWidth(c)));
    for (int row = 0; row <= from.getLastRowNum(); row++) {
      if (from.getRow(row) != null) {
        copy(from.getRow(row), to.createRow(row));
      }
    }
    from.getMergedRegions().forEach(to::addMergedRegion);
    ChartPlace.on(from).forEach(this::copy);
    print();
    to.getWorkbook().setPrintArea(0, 0, columns() - 1, 0, from.getLastRowNum());
  }

  private int columns() {
    int columns = 0;
    for (Row row : from) {
      columns = Math.max(columns, row.getLastCellNum());
    }
    return columns;
  }

  /** The picture; its points come along as plain values. */
  private void copy(ChartPlace.Hung hung) {
    hung.place().hang(to, points.of(hung.chart().getCTChartSpace()));
  }

  /** A row is as high as what it says now; a paragraph that says nothing shrinks. */
  private void copy(XSSFRow source, XSSFRow target) {
    double height = isParagraph(source) ? EMPTY_POINTS : source.getHeightInPoints();
    for (Cell cell : source) {
      XSSFCell copy = copy((XSSFCell) cell, target.createCell(cell.getColumnIndex()));
      height = Math.max(height, height(copy));
    }
    target.setHeightInPoints((float) Math.ceil(height));
  }

  /** Whether one text that is wrapped takes the whole width. */
  private boolean isParagraph(XSSFRow row) {
    CellRangeAddress cells = merged.get(new CellAddress(row.getRowNum(), 0));
    return cells != null
        && cells.getLastColumn() == columns() - 1
        && row.getCell(0).getCellStyle().getWrapText();
  }

  /** That of the text in {@code cell} where it is wrapped. */
  private double height(XSSFCell cell) {
    String text = text(cell);
    if (text.isEmpty() || !cell.getCellStyle().getWrapText()) {
      return 0;
    }
    XSSFFont font = cell.getCellStyle().getFont();
    return TextMeasure.height(text, room(cell), font.getFontHeightInPoints(), font.getBold());
  }

  private static String text(XSSFCell cell) {
    return WorkbookValues.stored(cell) instanceof String text ? text : "";
  }

  /** The width that a text has in {@code cell}, in points. */
  private double room(XSSFCell cell) {
    CellRangeAddress cells = merged.get(cell.getAddress());
    int last = cells == null ? cell.getColumnIndex() : cells.getLastColumn();
    double pixels =
        IntStream.rangeClosed(cell.getColumnIndex(), last)
            .mapToDouble(to::getColumnWidthInPixels)
            .sum();
    double indent = INDENT_POINTS * cell.getCellStyle().getIndention();
    return Units.pixelToPoints(pixels) - MARGIN_POINTS - indent;
  }

  private XSSFCell copy(XSSFCell source, XSSFCell target) {
    Object value = WorkbookValues.stored(source);
    target.setCellStyle(
        style(
            new Key(
                source.getCellStyle(),
                looksLikeFormula(value),
                isLong(source),
                rules.about(source))));
    if (!value.equals("")) {
      CellFill.fill(target, value);
    }
    return target;
  }

  /** Whether shrunk letters would be too small to be read. */
  private boolean isLong(XSSFCell cell) {
    XSSFFont font = cell.getCellStyle().getFont();
    return cell.getCellStyle().getShrinkToFit()
        && TextMeasure.width(text(cell), font.getFontHeightInPoints()) * LEAST_SHRUNK > room(cell);
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
    XSSFCellStyle copy = looks.copied(key.style());
    if (NumberFormats.MONEY.equals(copy.getDataFormatString())) {
      setFormat(copy, NumberFormats.money(moneyPlaces));
    }
    if (key.wraps()) {
      copy.setShrinkToFit(false);
      copy.setWrapText(true);
    }
    key.rule().ifPresent(rule -> ClientRules.draw(rule, copy));
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
    to.setHorizontallyCenter(true);
    to.getPrintSetup().setPaperSize(from.getPrintSetup().getPaperSize());
    to.getPrintSetup().setLandscape(from.getPrintSetup().getLandscape());
    to.getPrintSetup().setFitWidth((short) 1);
    to.getPrintSetup().setFitHeight((short) 1);
    for (PageMargin margin : PageMargin.values()) {
      to.setMargin(margin, from.getMargin(margin));
    }
  }
}
