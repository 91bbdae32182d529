package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Office;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.pressing.WorkbookPackage;
import frillbook.reading.TemplateReader;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.WorkbookCompiler;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCfRule;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTNumFmt;

/** A sum has the places of the currency that is typed into the sheet. */
final class MoneyShownTest {
  private static final String SHEET =
      """
      sheet: Till
      title: Till
      widths: [30, 20, 20, 10, 30]
      rows:
        - input: currency_code
          label: Currency
          part: shape
          kind: currency
          inch: USD
          cm: EUR
          prompt: Any.
        - line: money_places
          label: Places
          unit: "-"
          format: count
          guard: none
          formula: IF(currency_code="JPY",0,IF(currency_code="KWD",3,IF(currency_code="CLF",4,2)))
          note: Four kinds.
        - line: fabric
          label: Fabric
          unit: "{currency_code} a {long_unit}"
          format: money
          guard: none
          formula: 1234.56789
          note: One sum.
        - table: takings
          rows: 3
          show: "{n}<3"
          guard: none
          columns:
            - {column: day, label: Day, unit: "-", format: count, formula: "{n}", note: N.}
            - {column: takings, label: Takings, unit: "{currency_code}", format: money, formula: "{n}*1000+0.5", note: N.}
      """;

  @TempDir private Path folder;

  private static XSSFWorkbook compiled(Map<String, Object> inputs) {
    Map<String, String> files =
        Map.of("workbook.yaml", "title: T\nsheets: [till.yaml]\n", "till.yaml", SHEET);
    WorkbookTemplate template = TemplateReader.read(file -> Optional.ofNullable(files.get(file)));
    XSSFWorkbook workbook = new XSSFWorkbook();
    WorkbookSetting setting = new WorkbookSetting(LengthUnit.CM, inputs, Paper.A4);
    new WorkbookCompiler().compileInto(workbook, template, setting);
    return workbook;
  }

  private Path typed(String code) throws IOException {
    try (XSSFWorkbook workbook = compiled(Map.of())) {
      SheetValues.stored(workbook).cells("currency_code").get(0).setCellValue(code);
      return Files.write(folder.resolve(code + ".xlsx"), WorkbookPackage.asItIs(workbook));
    }
  }

  private static void shows(PrintedPages page, String fabric, String unit, String... takings) {
    List<String> lines = page.pages().get(0);
    assertTrue(
        lines.stream()
            .anyMatch(line -> line.matches("Fabric +" + fabric + " +" + unit + " +One sum\\.")),
        lines.toString());
    for (int day = 1; day <= takings.length; day++) {
      String row = day + " +" + takings[day - 1];
      assertTrue(lines.stream().anyMatch(line -> line.matches(row)), row + " in " + lines);
    }
  }

  /** By hand; places are those of ISO 4217. */
  @Test
  void libreOfficePrintsThePlacesOfTheCurrency() throws Exception {
    Office.PROGRAM.requireOrSkip();
    PrintedPages.PDF_TO_TEXT.requireOrSkip();
    Office office = new Office();
    List<PrintedPages> printed = new ArrayList<>();
    List<Path> pages = new ArrayList<>();
    for (String code : List.of("EUR", "JPY", "KWD", "CLF")) {
      pages.add(folder.resolve(code + ".pdf"));
      office.open(typed(code)).print(pages.get(pages.size() - 1)).close();
    }
    office.run();
    for (Path pdf : pages) {
      printed.add(PrintedPages.of(pdf, folder));
    }
    shows(printed);
  }

  /** The same. */
  @Test
  void gnumericPrintsThePlacesOfTheCurrency() throws Exception {
    Gnumeric.PROGRAM.requireOrSkip();
    PrintedPages.PDF_TO_TEXT.requireOrSkip();
    List<PrintedPages> pages = new ArrayList<>();
    for (String code : List.of("EUR", "JPY", "KWD", "CLF")) {
      pages.add(PrintedPages.byGnumeric(typed(code), folder));
    }
    shows(pages);
  }

  private static void shows(List<PrintedPages> pages) {
    shows(pages.get(0), "1,234.57", "EUR a m", "1,000.50", "2,000.50");
    shows(pages.get(1), "1,235", "JPY a m", "1,001", "2,001");
    shows(pages.get(2), "1,234.568", "KWD a m", "1,000.500", "2,000.500");
    shows(pages.get(3), "1,234.5679", "CLF a m", "1,000.5000", "2,000.5000");
  }

  /**
   * Excel refuses a file where two formats share a number or one has a number below 164. Sums of 0,
   * 3 and 4 places, in lines and in rows, are 6; broken per cent is 1; whole, halves, quarters and
   * sixteenths, alone, beside centimetres and in rows, are 12; whole, halves, quarters and eighths
   * as typed and of amounts in rows are 8.
   */
  @Test
  void conditionalFormatsHaveNumbersOfTheirOwn() throws IOException {
    byte[] file = WorkbookPackage.asItIs(compiled(Map.of()));
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(file))) {
      Map<Short, String> formats = workbook.getStylesSource().getNumberFormats();
      int found = 0;
      for (CTDxf style : workbook.getStylesSource().getCTStylesheet().getDxfs().getDxfList()) {
        if (style.isSetNumFmt()) {
          CTNumFmt format = style.getNumFmt();
          assertTrue(format.getNumFmtId() >= 164, format.toString());
          assertEquals(formats.get((short) format.getNumFmtId()), format.getFormatCode());
          found++;
        }
      }
      assertEquals(27, found);
    }
  }

  /** A program tries rules in the order of their priority (ISO/IEC 29500-1, 18.3.1.10). */
  @Test
  void noTwoRulesOfASheetHaveOnePriority() throws IOException {
    try (XSSFWorkbook workbook = TrialWorkbook.compiled(Trials.TEMPLATE, Trials.CM)) {
      workbook.forEach(sheet -> everyPriorityOnce((XSSFSheet) sheet));
    }
  }

  private static void everyPriorityOnce(XSSFSheet sheet) {
    List<Integer> priorities = new ArrayList<>();
    for (CTConditionalFormatting rules : sheet.getCTWorksheet().getConditionalFormattingList()) {
      rules.getCfRuleList().stream().map(CTCfRule::getPriority).forEach(priorities::add);
    }
    assertEquals(priorities.size(), new TreeSet<>(priorities).size(), sheet.getSheetName());
  }
}
