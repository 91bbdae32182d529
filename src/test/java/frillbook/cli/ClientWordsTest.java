package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.calculation.WorkbookValues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The maker's own words and money on the client's page. */
class ClientWordsTest {
  @TempDir private Path folder;

  private Typed made(String... args) {
    return Typed.made(
        folder, Stream.of(args, Ran.SMALL).flatMap(Stream::of).toArray(String[]::new));
  }

  @Test
  void wordsThatBeginLikeAFormulaStayWords() throws IOException {
    String link = "=HYPERLINK(\"http://example.org\",\"here\")";
    Typed plan =
        made(
            "--input=project_title=@home",
            "--input=delivery_words=" + link,
            "--input=maker_name=+1 a day");
    assertStayWords(plan, "project_title", "@home");
    assertStayWords(plan, "delivery_words", link);
    assertStayWords(plan, "maker_name", "+1 a day");
    plan.with(Map.of("delivery_words", "-5 %"));
    Files.delete(plan.page());
    assertStayWords(plan, "delivery_words", "-5 %");
  }

  private static void assertStayWords(Typed plan, String input, String words) throws IOException {
    try (XSSFWorkbook maker = Typed.open(plan.plan());
        XSSFWorkbook page =
            plan.page().toFile().exists() ? Typed.open(plan.page()) : plan.pageWritten()) {
      XSSFCell typed = typed(maker, input);
      assertEquals(CellType.STRING, typed.getCellType(), WorkbookValues.where(typed));
      assertEquals(words, typed.getStringCellValue(), WorkbookValues.where(typed));
      // "@" is the number format of a cell whose contents stay text (ISO/IEC 29500-1, 18.8.30).
      assertEquals("@", typed.getCellStyle().getDataFormatString());
      XSSFCell shown = PageCells.saying(page, words);
      assertEquals(CellType.STRING, shown.getCellType(), WorkbookValues.where(shown));
      assertEquals("@", shown.getCellStyle().getDataFormatString());
      assertTrue(shown.getCellStyle().getQuotePrefixed(), WorkbookValues.where(shown));
    }
  }

  private static XSSFCell typed(XSSFWorkbook maker, String input) {
    CellReference place = new CellReference(maker.getName(input).getRefersToFormula());
    return maker.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
  }

  @Test
  void otherWordsAreNotMarked() throws IOException {
    try (XSSFWorkbook page = made("--input=delivery_words=1+1 pillow").pageWritten()) {
      XSSFCell shown = PageCells.saying(page, "1+1 pillow");
      assertEquals("General", shown.getCellStyle().getDataFormatString());
    }
  }

  @Test
  void aNumberTypedForWordsIsWords() throws IOException {
    Typed plan = made().with(Map.of("delivery_words", 24.0));
    try (XSSFWorkbook page = plan.pageWritten()) {
      assertEquals(CellType.STRING, PageCells.saying(page, "24").getCellType());
    }
  }

  /** The price of {@link Ran#SMALL} is 77.50; a fifth of it is 15.50. */
  @Test
  void aTradeClientReadsPricesBeforeTaxAndTheTax() throws IOException {
    Typed plan = made("--input=trade_client=yes", "--input=tax_rate=20%", "--input=tax_words=VAT");
    try (XSSFWorkbook page = plan.pageWritten()) {
      assertNotNull(PageCells.saying(page, "77.50 USD"));
      String said = PageCells.mentioning(page, "VAT").getStringCellValue();
      String words = "Before VAT of 20%: as pictured 77.50 + 15.50 = 93.00 USD.";
      assertTrue(said.startsWith(words), said);
    }
  }

  /** 77.50 + 15.50. */
  @Test
  void anyOtherClientReadsThemWithTheTax() throws IOException {
    Typed plan =
        made("--input=tax_rate=20%", "--input=tax_words=GST", "--input=tax_rounding=order");
    try (XSSFWorkbook page = plan.pageWritten()) {
      assertNotNull(PageCells.saying(page, "93.00 USD"));
      String said = PageCells.mentioning(page, "GST").getStringCellValue();
      assertTrue(said.startsWith("With GST of 20%, rounded once on the order."), said);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "one_disc, The back is sewn shut by hand",
    "zipped_halves, Take the filling out first.",
    "overlapping, Take the filling out first."
  })
  void theCareFollowsTheBack(String back, String words) throws IOException {
    try (XSSFWorkbook page = made("--input=back_style=" + back).pageWritten()) {
      assertNotNull(PageCells.mentioning(page, words), back);
    }
  }

  @Test
  void contactPieceAndDeliveryAreSaidInTheMakersWords() throws IOException {
    Typed plan =
        made(
            "--input=maker_contact_words=by the lamp",
            "--input=piece_words=a button in the middle",
            "--input=delivery_words=by hand in May");
    try (XSSFWorkbook page = plan.pageWritten()) {
      assertNotNull(PageCells.saying(page, "by the lamp"));
      assertNotNull(PageCells.saying(page, "sewn closed; a button in the middle"));
      assertNotNull(PageCells.saying(page, "by hand in May"));
    }
  }

  /**
   * The currency is typed into one and the same plan. The places are those of ISO 4217. In dollars
   * and dinars the price is 77.50 as at {@link Ran#SMALL}. In yen, every line whole: 2 + 2 + 1 + 5
   * + 3, wage 40 and 15 % of 53, 8, come to 61; with 30 % 79.3, tidied to 79.5 and to whole yen.
   */
  @Test
  void moneyHasThePlacesOfItsCurrency() throws IOException {
    Typed plan = made();
    money(plan, "USD", "77.50 USD", "38.75 USD");
    money(plan, "JPY", "80 JPY", "40 JPY");
    money(plan, "KWD", "77.500 KWD", "38.750 KWD");
  }

  private static void money(Typed plan, String code, String price, String deposit)
      throws IOException {
    plan.with(Map.of("currency_code", code));
    try (XSSFWorkbook page = plan.pageWritten("--force")) {
      assertNotNull(PageCells.saying(page, price));
      String sentence = PageCells.mentioning(page, "before fabric is bought").getStringCellValue();
      assertTrue(sentence.endsWith(": " + deposit + " for the flower as pictured."), sentence);
    }
  }

  /** Its name where a choice has none of the maker's, and what stands where there is none. */
  @Test
  void aChoiceThatIsLeftOutLeavesWhatIsInThePrice() throws IOException {
    Typed plan = made("--input=choice_two_words=quieter").without("choice_three_more");
    try (XSSFWorkbook page = plan.pageWritten()) {
      assertNotNull(PageCells.saying(page, "As pictured"));
      assertNotNull(PageCells.saying(page, "quieter"));
      assertNotNull(PageCells.saying(page, "If you would like it"));
      assertEquals(
          Set.of(BorderStyle.THIN, BorderStyle.NONE),
          Set.of(
              left(PageCells.saying(page, "quieter")),
              left(PageCells.saying(page, "If you would like it"))));
    }
  }

  private static BorderStyle left(XSSFCell cell) {
    return cell.getCellStyle().getBorderLeft();
  }
}
