package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontScheme;
import org.apache.poi.ss.usermodel.FontUnderline;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of one workbook, each made once. */
public final class Styles {
  private record Key(Look look, String numberFormat, HorizontalAlignment across, boolean ruled) {}

  private final XSSFWorkbook workbook;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
  private final Map<Look, XSSFFont> fonts = new HashMap<>();

  private final Emphasis emphasis;
  private final MoneyPlaces moneyPlaces;
  private final LengthPlaces lengthPlaces;
  private final PercentPlaces percentPlaces;

  Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.emphasis = new Emphasis(workbook);
    this.moneyPlaces = new MoneyPlaces(workbook);
    this.lengthPlaces = new LengthPlaces(workbook);
    this.percentPlaces = new PercentPlaces(workbook);
  }

  /**
   * Makes our typeface the one that columns are measured in. Only for a workbook without sheets:
   * others keep the look they have.
   */
  public static void setDefaultFont(XSSFWorkbook workbook) {
    XSSFFont font = workbook.getFontAt(0);
    font.setScheme(FontScheme.NONE);
    font.setFontName(Look.FACE);
    font.setFontHeight(Look.VALUE.size());
    font.setColor(colour(Look.TEXT));
  }

  /** The styles that depend on values. */
  Emphasis emphasis() {
    return emphasis;
  }

  /** The formats that depend on the currency. */
  MoneyPlaces moneyPlaces() {
    return moneyPlaces;
  }

  /** The formats that depend on the fraction of an inch. */
  LengthPlaces lengthPlaces() {
    return lengthPlaces;
  }

  /** What the filled rows of a table look like. */
  RowPlaces rowPlaces() {
    return new RowPlaces(moneyPlaces, lengthPlaces, emphasis.rowRule());
  }

  /** The formats that depend on whether a per cent is whole. */
  PercentPlaces percentPlaces() {
    return percentPlaces;
  }

  XSSFCellStyle of(Look look) {
    return of(look, NumberFormats.GENERAL);
  }

  XSSFCellStyle of(Look look, String numberFormat) {
    return of(look, numberFormat, look.across());
  }

  XSSFCellStyle of(Look look, String numberFormat, HorizontalAlignment across) {
    return styles.computeIfAbsent(new Key(look, numberFormat, across, true), this::make);
  }

  /** Without the rules and the ground, which a condition draws ({@link Emphasis#addRules}). */
  XSSFCellStyle unruled(Look look) {
    Key key = new Key(look, NumberFormats.GENERAL, look.across(), false);
    return styles.computeIfAbsent(key, this::make);
  }

  private XSSFCellStyle make(Key key) {
    Look look = key.look();
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(fonts.computeIfAbsent(look, this::font));
    style.setDataFormat(workbook.createDataFormat().getFormat(key.numberFormat()));
    style.setAlignment(key.across());
    style.setVerticalAlignment(look.upright());
    style.setWrapText(look.wraps());
    style.setShrinkToFit(look.shrinks());
    if (look.across() == HorizontalAlignment.RIGHT && key.across() == HorizontalAlignment.LEFT) {
      // Words beside a right-aligned number need a gap.
      style.setIndention((short) 1);
    } else {
      style.setIndention((short) look.indent());
    }
    style.setLocked(!look.isFilled());
    if (key.ruled()) {
      drawRules(style, look);
    }
    return style;
  }

  private static void drawRules(XSSFCellStyle style, Look look) {
    rule(style, look);
    look.ground().ifPresent(ground -> fill(style, ground));
    switch (look) {
      case INPUT, INPUT_WORDS, TICK, MEASURED -> box(style, Look.INPUT_EDGE, BorderStyle.MEDIUM);
      case CAUTION -> box(style, Look.ALARM, BorderStyle.THIN);
      default -> rules(style, look);
    }
  }

  private static void rules(XSSFCellStyle style, Look look) {
    if (look.topRule() != BorderStyle.NONE) {
      style.setBorderTop(look.topRule());
      style.setTopBorderColor(colour(Look.EDGE));
    }
    if (look.sideRule() != BorderStyle.NONE) {
      style.setBorderLeft(look.sideRule());
      style.setBorderRight(look.sideRule());
      style.setLeftBorderColor(colour(Look.EDGE));
      style.setRightBorderColor(colour(Look.EDGE));
    }
  }

  private static void fill(XSSFCellStyle style, String ground) {
    style.setFillForegroundColor(colour(ground));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  private static void rule(XSSFCellStyle style, Look look) {
    if (look.rule() != BorderStyle.NONE) {
      style.setBorderBottom(look.rule());
      style.setBottomBorderColor(colour(look.ruleColour()));
    }
  }

  private static void box(XSSFCellStyle style, String edge, BorderStyle border) {
    style.setBorderTop(border);
    style.setBorderBottom(border);
    style.setBorderLeft(border);
    style.setBorderRight(border);
    style.setTopBorderColor(colour(edge));
    style.setBottomBorderColor(colour(edge));
    style.setLeftBorderColor(colour(edge));
    style.setRightBorderColor(colour(edge));
  }

  private XSSFFont font(Look look) {
    XSSFFont font = workbook.createFont();
    font.setFontName(Look.FACE);
    font.setFontHeight(look.size());
    font.setBold(look.bold());
    font.setUnderline(look.leads() ? FontUnderline.SINGLE : FontUnderline.NONE);
    font.setColor(colour(look.colour()));
    return font;
  }

  /** From RRGGBB. */
  static XSSFColor colour(String hex) {
    return new XSSFColor(opaque(hex));
  }

  /** The four bytes that the schema wants: opacity, red, green, blue. */
  static byte[] opaque(String hex) {
    int rgb = Integer.parseInt(hex, 16);
    return new byte[] {(byte) 0xFF, (byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
  }
}
