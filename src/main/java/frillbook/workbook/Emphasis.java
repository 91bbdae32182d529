package frillbook.workbook;

import frillbook.look.Look;
import frillbook.template.CheckLevel;
import frillbook.template.LineTemplate;
import frillbook.wording.CodeWord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBorder;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBorderPr;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCfRule;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFont;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTNumFmt;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTPatternFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STBorderStyle;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCfType;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STPatternType;

/**
 * Looks that depend on values: a sentence that must be read, a rule under a row that is filled.
 *
 * <p>Written in the terms of the schema (ISO/IEC 29500-1, 18.3.1.18): the library's own rules make
 * a style of their own each time, with a colour the schema refuses.
 */
public final class Emphasis {
  private static final String EMPTY = "=\"\"";

  private static final Pattern RULED = Pattern.compile("N\\((\\w+)\\)>0");

  private final long alarm;
  private final long remark;
  private final Map<String, Long> flags = new LinkedHashMap<>();
  private final long rowRule;
  private final long unseen;
  private final long box;
  private final StylesTable table;
  private final Map<Look, Long> ruled = new HashMap<>();

  Emphasis(XSSFWorkbook workbook) {
    StylesTable styles = workbook.getStylesSource();
    this.table = styles;
    this.alarm = put(styles, letters(Look.ALARM));
    this.remark = put(styles, letters(Look.LOOK_AGAIN));
    List<String> grounds = List.of(Look.READY, Look.LOOK_AGAIN, Look.STOP);
    for (int i = 0; i < grounds.size(); i++) {
      flags.put(LineTemplate.VERDICTS.get(i), put(styles, flag(grounds.get(i))));
    }
    this.rowRule = put(styles, underlined());
    this.unseen = put(styles, unseen());
    this.box = put(styles, box());
  }

  /** Adds {@code style} to the workbook's; gives its index there. */
  static long put(StylesTable styles, CTDxf style) {
    // The table answers with the number of styles, one more than the new one's index.
    return styles.putDxf(style) - 1L;
  }

  /**
   * Numbers written as {@code format} says. The number of the format must be one of the workbook's
   * own, even for a format built in.
   */
  static CTDxf numbers(StylesTable styles, String format) {
    CTDxf style = CTDxf.Factory.newInstance();
    CTNumFmt numbers = style.addNewNumFmt();
    numbers.setFormatCode(format);
    numbers.setNumFmtId(styles.putNumberFormat(format));
    return style;
  }

  /** Bold, of that colour. */
  private static CTDxf letters(String colour) {
    CTDxf style = CTDxf.Factory.newInstance();
    CTFont letters = style.addNewFont();
    letters.addNewB().setVal(true);
    letters.addNewColor().setRgb(Styles.opaque(colour));
    return style;
  }

  /** White and bold on that ground. */
  private static CTDxf flag(String ground) {
    CTDxf style = letters(Look.WHITE);
    fill(style, ground);
    return style;
  }

  /** White on white, without rules. */
  private static CTDxf unseen() {
    CTDxf style = CTDxf.Factory.newInstance();
    style.addNewFont().addNewColor().setRgb(Styles.opaque(Look.WHITE));
    fill(style, Look.WHITE);
    CTBorder border = style.addNewBorder();
    border.addNewLeft().setStyle(STBorderStyle.NONE);
    border.addNewRight().setStyle(STBorderStyle.NONE);
    border.addNewTop().setStyle(STBorderStyle.NONE);
    border.addNewBottom().setStyle(STBorderStyle.NONE);
    return style;
  }

  private static CTDxf underlined() {
    CTDxf style = CTDxf.Factory.newInstance();
    underline(style);
    return style;
  }

  /** Puts a hairline under what has {@code style}. */
  static void underline(CTDxf style) {
    thin(style.addNewBorder().addNewBottom(), Look.HAIRLINE);
  }

  /**
   * Bold dark red letters while {@code condition} holds, written for the first of {@code cells};
   * the words themselves say what is wrong. Cells below others with the same condition share its
   * rule.
   */
  void addAlarm(XSSFSheet sheet, String condition, CellRangeAddress cells) {
    share(sheet, cells, condition, alarm, condition::equals);
  }

  /**
   * Lets the rule of the sheet that has that style, and a condition that is {@code same}, hold for
   * {@code cells} too, or adds one.
   */
  private static void share(
      XSSFSheet sheet,
      CellRangeAddress cells,
      String condition,
      long style,
      Predicate<String> same) {
    sheet.getCTWorksheet().getConditionalFormattingList().stream()
        .filter(each -> each.getCfRuleArray(0).getDxfId() == style)
        .filter(each -> same.test(each.getCfRuleArray(0).getFormulaArray(0)))
        .findFirst()
        .ifPresentOrElse(
            each -> widen(each, cells), () -> add(sheet, List.of(cells), Map.of(condition, style)));
  }

  /** Lets {@code rules} hold for {@code more} cells, too. */
  private static void widen(CTConditionalFormatting rules, CellRangeAddress more) {
    List<CellRangeAddress> areas = new ArrayList<>();
    for (Object area : rules.getSqref()) {
      areas.add(CellRangeAddress.valueOf((String) area));
    }
    join(areas, more);
    rules.setSqref(areas.stream().map(CellRangeAddress::formatAsString).toList());
  }

  /**
   * Sets off a line that says what all checks come to, over its value.
   *
   * @param row of it, from 0
   * @param words of its codes
   */
  void addFlag(XSSFSheet sheet, int row, List<CodeWord> words) {
    String cell = new CellReference(row, SheetPlaces.VALUE, false, true).formatAsString();
    Map<String, Long> styles = new LinkedHashMap<>();
    words.forEach(
        word ->
            styles.put(
                cell + "=\"" + word.word().replace("\"", "\"\"") + "\"", flags.get(word.code())));
    add(
        sheet,
        List.of(new CellRangeAddress(row, row, SheetPlaces.VALUE, SheetPlaces.VALUE)),
        styles);
  }

  /** Sets off the faults in rows {@code first} to {@code last}, and the sentences beside them. */
  void addFaults(XSSFSheet sheet, int first, int last, int lastColumn) {
    String fault = new CellReference(first, SheetPlaces.FAULT, false, true).formatAsString();
    String stops = fault + "=" + CheckLevel.STOP.code();
    String looksAgain = fault + "=" + CheckLevel.LOOK_AGAIN.code();
    Map<String, Long> words = new LinkedHashMap<>();
    words.put(stops, flags.get("stop"));
    words.put(looksAgain, flags.get("look_again"));
    Map<String, Long> sentences = new LinkedHashMap<>();
    sentences.put(stops, alarm);
    sentences.put(looksAgain, remark);
    add(
        sheet,
        List.of(new CellRangeAddress(first, last, SheetPlaces.FAULT, SheetPlaces.FAULT)),
        words);
    add(
        sheet,
        List.of(new CellRangeAddress(first, last, SheetPlaces.SENTENCE, lastColumn)),
        sentences);
  }

  /** Sets off what fails in rows {@code first} to {@code last}, where what is wrong is listed. */
  void addFailing(Page page, int first, int last) {
    int left = page.firstColumn();
    String code = new CellReference(first, left, false, true).formatAsString();
    Map<String, Long> styles = new LinkedHashMap<>();
    styles.put("AND(" + code + ">0," + code + "<2000)", alarm);
    styles.put(code + ">0", remark);
    CellRangeAddress cells = new CellRangeAddress(first, last, left, left + page.lastColumn());
    add(page.sheet(), List.of(cells), styles);
  }

  /** Hides the head of a table while that condition says that its rows are blank. */
  void addHead(XSSFSheet sheet, List<CellRangeAddress> head, String blank) {
    add(sheet, head, Map.of(blank, unseen));
  }

  /**
   * Hides rows, one rule for all of a sheet, each while its cell in {@code column} is empty.
   *
   * @param rows of one row, below those hidden before
   */
  void hideEmpty(XSSFSheet sheet, CellRangeAddress rows, int column) {
    String empty = new CellReference(rows.getFirstRow(), column, false, true).formatAsString();
    share(sheet, rows, empty + EMPTY, unseen, condition -> condition.endsWith(EMPTY));
  }

  /** Frames cells to be ticked while all {@code conditions} hold, written for the first cell. */
  void addBoxes(XSSFSheet sheet, CellRangeAddress cells, String conditions) {
    add(sheet, List.of(cells), Map.of("AND(" + conditions + ")", box));
  }

  /** The name whose value makes a rule of {@link #addRules} hold; empty for another condition. */
  public static Optional<String> ruledBy(String condition) {
    Matcher ruled = RULED.matcher(condition);
    return ruled.matches() ? Optional.of(ruled.group(1)) : Optional.empty();
  }

  /** Draws the rules of {@code look} about {@code cells} while {@code name} is above 0. */
  void addRules(XSSFSheet sheet, Look look, String name, CellRangeAddress cells) {
    long style = ruled.computeIfAbsent(look, of -> put(table, rules(of)));
    String condition = "N(" + name + ")>0";
    share(sheet, cells, condition, style, condition::equals);
  }

  /** Thin, since a style of this kind has no other rules in some programs. */
  private static CTDxf rules(Look look) {
    CTDxf style = CTDxf.Factory.newInstance();
    look.ground().ifPresent(ground -> fill(style, ground));
    if (look.ground().isEmpty()) {
      CTBorder border = style.addNewBorder();
      if (look.sideRule() != BorderStyle.NONE) {
        thin(border.addNewLeft(), Look.EDGE);
        thin(border.addNewRight(), Look.EDGE);
      }
      if (look.topRule() != BorderStyle.NONE) {
        thin(border.addNewTop(), Look.EDGE);
      }
      if (look.rule() != BorderStyle.NONE) {
        thin(border.addNewBottom(), look.ruleColour());
      }
    }
    return style;
  }

  /** A style of this kind has its ground as the back of its pattern. */
  private static void fill(CTDxf style, String ground) {
    CTPatternFill fill = style.addNewFill().addNewPatternFill();
    fill.setPatternType(STPatternType.SOLID);
    fill.addNewBgColor().setRgb(Styles.opaque(ground));
  }

  private static CTDxf box() {
    CTDxf style = CTDxf.Factory.newInstance();
    fill(style, Look.CREAM);
    CTBorder border = style.addNewBorder();
    thin(border.addNewLeft(), Look.INPUT_EDGE);
    thin(border.addNewRight(), Look.INPUT_EDGE);
    thin(border.addNewTop(), Look.INPUT_EDGE);
    thin(border.addNewBottom(), Look.INPUT_EDGE);
    return style;
  }

  private static void thin(CTBorderPr rule, String colour) {
    rule.setStyle(STBorderStyle.THIN);
    rule.addNewColor().setRgb(Styles.opaque(colour));
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

  /** Adds cells to the last area where they go on with it, else as one of their own. */
  static void join(List<CellRangeAddress> areas, CellRangeAddress next) {
    CellRangeAddress last = areas.isEmpty() ? next : areas.get(areas.size() - 1);
    if (last.getLastRow() + 1 == next.getFirstRow()) {
      last.setLastRow(next.getLastRow());
    } else if (last.getLastColumn() + 1 == next.getFirstColumn()) {
      last.setLastColumn(next.getLastColumn());
    } else {
      areas.add(next);
    }
  }

  private static int rules(CTWorksheet sheet) {
    return sheet.getConditionalFormattingList().stream()
        .mapToInt(CTConditionalFormatting::sizeOfCfRuleArray)
        .sum();
  }
}
