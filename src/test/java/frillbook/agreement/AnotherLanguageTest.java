package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.client.ClientPage;
import frillbook.measure.Currencies;
import frillbook.measure.LengthUnit;
import frillbook.press.CellValues;
import frillbook.press.Paper;
import frillbook.press.Press;
import frillbook.pressing.PressMaker;
import frillbook.pressing.WorkbookPackage;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.PlanWords;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A second language is a folder of texts: with every English text in wide letters no narrow one is
 * left, and no number changes.
 */
final class AnotherLanguageTest {
  private static final WorkbookTemplate MARKED =
      TemplateReader.read(TemplateSource.packaged(), MarkedTexts.of(TemplateSource.packaged()));

  private static final Pattern WORD = Pattern.compile("[A-Za-z]+");

  /** The column of a cell that a sentence names, B, or that a link leads to, A: no words. */
  private static final Pattern CELL =
      Pattern.compile("(?<=\\([^()]{1,31} )B(?=\\d+\\)|$)|(?<=^#[^!]{1,31}!)A$");

  /** Symbols of units, the same in every language, and the product. */
  private static final Set<String> EVERYWHERE =
      Set.of("in", "cm", "yd", "m", "g", "oz", "lb", "min", "frillbook");

  private static final Map<LengthUnit, Press> PRESSES = new EnumMap<>(LengthUnit.class);
  private static final Map<LengthUnit, TrialWorkbook> WORKBOOKS = new EnumMap<>(LengthUnit.class);

  private static Press press(LengthUnit unit) {
    return PRESSES.computeIfAbsent(unit, of -> PressMaker.of(MARKED, of));
  }

  private static TrialWorkbook workbook(LengthUnit unit) {
    return WORKBOOKS.computeIfAbsent(
        unit, of -> new TrialWorkbook(MARKED, TrialWorkbook.compiled(MARKED, of)));
  }

  /** In their own states: the cut, the seams, the back, what is left out, what cannot be made. */
  private static List<TrialBrief> briefs(WorkbookTemplate template, LengthUnit unit) {
    TrialBrief preset = TrialBrief.preset(template, unit);
    TrialBrief order =
        preset
            .with("grain", "bias")
            .with("row_style", "rings")
            .with("edge_finish", "narrow_hem")
            .with("join_finish", "plain")
            .with("back_style", "zipped_halves")
            .with("interfaced", "base_and_back")
            .with("quantity", 3.0)
            .with("matching_discs", 1.0)
            .with("client_name", "４")
            .with("maker_name", "５")
            .with("choice_two_words", "６")
            .with("tax_rate", 0.07)
            .with("deposit_rate", 0.3);
    return List.of(
        preset,
        order.titled("order"),
        order
            .with("grain", "lengthwise")
            .with("back_style", "overlapping")
            .with("charge_as", "used")
            .with("profit_basis", "margin")
            .with("wash_shrink_length", 0.05)
            .titled("washed"),
        preset.with("choice_two_more", null).titled("one"),
        preset.with("centre_gap", preset.number("diameter") / 2).titled("no ring fits"));
  }

  /** The same with cells that hold what cannot be used. */
  private static List<TrialBrief> all(WorkbookTemplate template, LengthUnit unit) {
    List<TrialBrief> briefs = new ArrayList<>(briefs(template, unit));
    briefs.add(briefs.get(0).with("fullness", 99.0).titled("too full"));
    briefs.add(briefs.get(0).with("grain", "？").with("hourly_rate", null).titled("unusable"));
    return briefs;
  }

  private static List<String> english(String text) {
    if (!WORD.matcher(text).find()) {
      return List.of();
    }
    List<String> found = new ArrayList<>();
    Matcher word = WORD.matcher(CELL.matcher(text).replaceAll(""));
    while (word.find()) {
      if (!EVERYWHERE.contains(word.group()) && !Currencies.has(word.group())) {
        found.add(word.group());
      }
    }
    return found;
  }

  private static Map<String, String> english(List<ShownWords.Shown> shown, Set<String> names) {
    Map<String, String> found = new TreeMap<>();
    shown.stream()
        .filter(each -> !english(each.text()).isEmpty() && !isNames(each.text(), names))
        .forEach(each -> found.putIfAbsent(each.text(), each.where()));
    return found;
  }

  /** The list of all names has those that mean the same in one cell. */
  private static boolean isNames(String text, Set<String> names) {
    return names.containsAll(List.of(text.split(", ")));
  }

  private static byte[] file(Press press, TrialBrief brief) {
    var said =
        PlanWords.complete(
            press.form().vocabulary(), press.unit(), brief.inputs(), brief.planned());
    CellValues engine = new CellValues(press.form(), press.unit(), brief.inputs(), said);
    return press.fill(press.filling(engine, brief.inputs(), Paper.A4));
  }

  /** What formulas may speak of; the list of all names has them in a column. */
  private static Set<String> names(byte[] file) throws IOException {
    Set<String> names = new HashSet<>();
    try (XSSFWorkbook workbook = open(file)) {
      workbook.getAllNames().forEach(name -> names.add(name.getNameName()));
    }
    return names;
  }

  private static XSSFWorkbook open(byte[] file) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(file));
  }

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void noEnglishShowsInTheFile(LengthUnit unit) throws IOException {
    Press press = press(unit);
    Set<String> names = names(file(press, TrialBrief.preset(MARKED, unit)));
    for (TrialBrief brief : briefs(MARKED, unit)) {
      List<ShownWords.Shown> shown = ShownWords.of(file(press, brief));
      assertTrue(shown.size() > 3000, shown.size() + " texts");
      assertEquals(Map.of(), english(shown, names), brief.toString());
    }
  }

  @Test
  void noEnglishShowsOnTheClientsPage() throws IOException {
    LengthUnit unit = LengthUnit.CM;
    Press press = press(unit);
    String sheet = press.form().clientSheet().orElseThrow();
    int most = 0;
    for (TrialBrief brief : briefs(MARKED, unit)) {
      try (XSSFWorkbook workbook = open(file(press, brief));
          XSSFWorkbook page = ClientPage.of(workbook, sheet, press.form().phrases())) {
        List<ShownWords.Shown> shown = ShownWords.of(WorkbookPackage.asItIs(page));
        most = Math.max(most, shown.size());
        assertTrue(shown.size() > 3, shown.size() + " texts");
        assertEquals(Map.of(), english(shown, Set.of()), brief.toString());
      }
    }
    // Where there is no plan a page says only that; where there is one, all of it.
    assertTrue(most > 30, most + " texts");
  }

  @Test
  void noEnglishIsCalculated() {
    LengthUnit unit = LengthUnit.CM;
    TrialWorkbook workbook = workbook(unit);
    for (TrialBrief brief : all(MARKED, unit)) {
      SheetValues sheet = workbook.given(brief);
      Map<String, String> found = new TreeMap<>();
      for (XSSFCell cell : workbook.formulaCells()) {
        String text = sheet.value(cell) instanceof String words ? words : "";
        if (!english(text).isEmpty()) {
          found.put(text, cell.getSheet().getSheetName() + "!" + cell.getAddress());
        }
      }
      assertEquals(Map.of(), found, brief.toString());
    }
  }

  @Test
  void theEngineSaysWhatTheWorkbookSays() {
    LengthUnit unit = LengthUnit.INCH;
    TrialWorkbook workbook = workbook(unit);
    workbook.compare(briefs(MARKED, unit)).requireAgreement();
  }

  /** Names of the values and all numbers among them. */
  private static Map<String, List<Object>> numbers(
      WorkbookTemplate template, TrialWorkbook workbook, TrialBrief brief) {
    SheetValues sheet = workbook.given(brief);
    Map<String, List<Object>> numbers = new TreeMap<>();
    template.lines().forEach(line -> numbers.put(line.name(), numbers(sheet, line.name())));
    template.checks().forEach(check -> numbers.put(check.name(), numbers(sheet, check.name())));
    template.tables().stream()
        .flatMap(table -> table.columns().stream())
        .forEach(column -> numbers.put(column.name(), numbers(sheet, column.name())));
    return numbers;
  }

  private static List<Object> numbers(SheetValues sheet, String name) {
    return sheet.column(name).stream()
        .map(value -> value instanceof Double ? value : "words")
        .toList();
  }

  @Test
  void numbersAreTheSameInEveryLanguage() {
    LengthUnit unit = LengthUnit.INCH;
    TrialWorkbook marked = workbook(unit);
    List<TrialBrief> theirs = all(MARKED, unit);
    List<TrialBrief> ours = all(Trials.TEMPLATE, unit);
    for (int i = 0; i < ours.size(); i++) {
      Map<String, List<Object>> english =
          numbers(Trials.TEMPLATE, Trials.workbook(unit), ours.get(i));
      assertTrue(english.size() > 500, english.size() + " names");
      assertEquals(english, numbers(MARKED, marked, theirs.get(i)), ours.get(i).toString());
    }
  }

  /** The search finds English where it is, of every kind. */
  @Test
  void englishIsFoundInTheEnglishFile() {
    TrialBrief preset = TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
    Set<String> kinds = new HashSet<>();
    ShownWords.of(PressedFile.of(preset)).stream()
        .filter(each -> !english(each.text()).isEmpty())
        .map(ShownWords.Shown::where)
        .forEach(where -> kinds.add(where.substring(where.lastIndexOf('/') + 1)));
    for (String kind :
        List.of(
            "workbook.xml sheet name",
            "sharedStrings.xml t",
            "sheet1.xml v",
            "sheet1.xml f",
            "sheet1.xml dataValidation errorTitle",
            "sheet1.xml formula1",
            "drawing1.xml cNvPr descr",
            "styles.xml formatCode",
            "core.xml title")) {
      assertTrue(kinds.contains(kind), kind + " not in " + kinds);
    }
  }
}
