package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.calculation.WorkbookValues;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the client's page keeps to the maker: every part of the package is read for it. */
class ClientSecrecyTest {
  /** Figures that nothing else on the page can come to. */
  private static final String[] TELL_TALES = {
    "--input=quantity=3",
    "--input=price_frill_fabric=23.71",
    "--input=price_base_fabric=13.57",
    "--input=price_interfacing=7.83",
    "--input=price_zip=4.19",
    "--input=price_fill=11.47",
    "--input=price_thread=5.87",
    "--input=price_extra_one=3.917",
    "--input=extra_one_needed=7.31",
    "--input=extra_one_step=0.731",
    "--input=hourly_rate=41.37",
    "--input=overhead_rate=0.317",
    "--input=profit_rate=0.273",
    "--input=tax_rate=0.0825",
    "--input=deposit_rate=0.4",
    "--input=tidy_step=0",
    "--input=offer_each=219.43",
    "--input=cheaper_share=100%",
    "--input=gather_rate=3.719",
    "--input=sew_rows_rate=4.283",
    "--input=fill_close_setup=6.613"
  };

  private static final Pattern WORDS_OF_MONEY_AND_TIME =
      Pattern.compile(
          "wage|markup|margin|overhead|profit|hour|minute|cost|supplier|labour|rate\\b|bargain"
              + "|lowest|net\\b");

  /** Columns of the plan that the client's picture is drawn from. */
  private static final List<String> DRAWN =
      IntStream.rangeClosed(1, 12).mapToObj(ring -> "petal_" + ring + "_out").toList();

  @TempDir private static Path folder;

  private static Typed plan;
  private static List<String> said;
  private static Secrets secrets;

  @BeforeAll
  static void writePage() throws IOException {
    plan = Typed.made(folder, TELL_TALES);
    plan.pageWritten().close();
    said = PackageText.said(plan.page());
    secrets = Secrets.of(plan.plan());
  }

  /**
   * The points of the picture may come to any number by chance, so the cell of each is taken out
   * first; the picture itself keeps none. Whatever else is said must be found.
   */
  @Test
  void noPriceRateHourOrCostOfTheMakerIsInAnyPart() throws IOException {
    assertEquals(Set.of(), secrets.toldIn(saidBesidesThePicture()));
  }

  private static List<String> saidBesidesThePicture() throws IOException {
    List<String> others = new ArrayList<>(said);
    for (double point : points()) {
      assertTrue(others.remove(String.valueOf(point)), "cell " + point);
    }
    return others;
  }

  private static List<Double> points() throws IOException {
    try (XSSFWorkbook workbook = Typed.open(plan.plan())) {
      WorkbookValues values = new WorkbookValues(workbook);
      return DRAWN.stream()
          .flatMap(name -> values.column(name).stream())
          .map(Double.class::cast)
          .toList();
    }
  }

  @Test
  void thePictureIsDrawnFromTheMakersPointsOfTheFlowerAlone() throws IOException {
    // Twelve rings of 144 steps, one of them twice.
    assertEquals(12 * (144 + 1), points().size());
    assertEquals(said.size() - points().size(), saidBesidesThePicture().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<c r='B7'><v>126.71</v></c>",
        "<c r='B7'><f>126.71*B7</f></c>",
        "<c r='B7' t='inlineStr'><is><t>for 126.71</t></is></c>",
        "<si><t>126.71 EUR</t></si>",
        "<pt idx='7'><v>126.71</v></pt>",
        "<pt idx='7' formatCode='126.71'><v>7</v></pt>",
        "<f>Client!$B$7*126.71</f>",
        "<comment ref='B7'><text><t>126.71</t></text></comment>",
        "<definedName name='rate'>126.71</definedName>",
        "<definedName name='rate_126.71'>Client!$B$7</definedName>",
        "<title>126.71</title>",
        "<cNvPr id='7' name='picture' descr='126.71 an hour'/>",
        "<oddFooter>126.71</oddFooter>",
        "<numFmt formatCode='&quot;126.71&quot;'/>",
        "<a><!-- 126.71 --></a>",
        "<a><?rate 126.71?></a>"
      })
  void aSecretIsFoundWhereverItIsWritten(String part) throws XMLStreamException {
    Secrets secret = new Secrets(Map.of("rate", 126.71));
    Secrets whole = new Secrets(Map.of("minutes", 126.0));
    assertFalse(secret.toldIn(PackageText.said(part)).isEmpty());
    assertFalse(whole.toldIn(PackageText.said(part.replace("126.71", "126"))).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<row r='126' spans='1:126'/>",
        "<c r='AB126'><v>7</v></c>",
        "<c r='B7' t='s'><v>126</v></c>",
        "<f>Client!$B$126:$C$126</f>",
        "<definedName name='area'>Client!$B$7:$C$126</definedName>",
        "<mergeCell ref='A126:B126'/>",
        "<pt idx='126'><v>7</v></pt>",
        "<ptCount val='126'/>"
      })
  void whereSomethingStandsIsNoNumberThatIsSaid(String part) throws XMLStreamException {
    Secrets whole = new Secrets(Map.of("minutes", 126.0));
    assertEquals(Set.of(), whole.toldIn(PackageText.said(part)));
  }

  @Test
  void theSearchFindsTheSecretsWhereTheyAre() throws IOException {
    assertTrue(
        secrets.numbers().keySet().containsAll(Set.of("hourly_rate 1", "hours_total 1")),
        secrets.numbers().keySet().toString());
    assertTrue(secrets.numbers().size() > 80, secrets.numbers().size() + " secrets");
    assertEquals(secrets.numbers().size(), secrets.toldIn(PackageText.said(plan.plan())).size());
    Secrets share = new Secrets(Map.of("profit_rate", 0.273));
    assertFalse(share.toldIn(List.of("with 27.3 % on it")).isEmpty());
    assertFalse(share.toldIn(List.of("0,273")).isEmpty());
  }

  @Test
  void noWordOfMoneyOrTimeThatIsTheMakersIsInAnyPart() {
    Set<String> found = new TreeSet<>();
    for (String text : said) {
      WORDS_OF_MONEY_AND_TIME
          .matcher(text.toLowerCase(Locale.ROOT))
          .results()
          .forEach(word -> found.add(word.group() + " in: " + text));
    }
    assertEquals(Set.of(), found);
  }

  @Test
  void thePageSaysWhatTheClientAsks() {
    String all = String.join("\n", said);
    for (String wanted : List.of("3 cushions", "8.25%", "40%", "30 days", "signature")) {
      assertTrue(all.contains(wanted), wanted);
    }
  }

  @Test
  void thereIsOneSheetAndNothingOfItIsHidden() throws IOException {
    try (XSSFWorkbook page = Typed.open(plan.page())) {
      assertEquals(1, page.getNumberOfSheets());
      assertEquals(SheetVisibility.VISIBLE, page.getSheetVisibility(0));
      XSSFSheet sheet = page.getSheetAt(0);
      sheet.forEach(row -> assertFalse(row.getZeroHeight(), "row " + (row.getRowNum() + 1)));
      for (int column = 0; column < 20; column++) {
        assertFalse(sheet.isColumnHidden(column), "column " + column);
      }
    }
  }

  @Test
  void thePartsAreThoseOfOneSheetOfValuesAndNoMore() throws IOException {
    assertEquals(
        Set.of(
            "[Content_Types].xml",
            "_rels/.rels",
            "docProps/app.xml",
            "docProps/core.xml",
            "xl/_rels/workbook.xml.rels",
            "xl/charts/chart1.xml",
            "xl/drawings/_rels/drawing1.xml.rels",
            "xl/drawings/drawing1.xml",
            "xl/sharedStrings.xml",
            "xl/styles.xml",
            "xl/workbook.xml",
            "xl/worksheets/_rels/sheet1.xml.rels",
            "xl/worksheets/sheet1.xml"),
        PackageText.parts(plan.page()).keySet());
  }

  @Test
  void thereIsNoFormulaNoNameNoCommentAndNoLink() throws IOException {
    Map<String, String> parts = PackageText.parts(plan.page());
    for (Map.Entry<String, String> part : parts.entrySet()) {
      for (String element : List.of("<f>", "<f ", "comment", "External", "<!--")) {
        assertFalse(part.getValue().contains(element), element + " in " + part.getKey());
      }
    }
    String names = parts.get("xl/workbook.xml");
    assertEquals(1, names.split("<definedName ", -1).length - 1, names);
    assertTrue(names.contains("<definedName name=\"_xlnm.Print_Area\""), names);
    // The picture reads cells of the client's own sheet alone.
    Matcher cells =
        Pattern.compile("<c:f>([^<]*)</c:f>").matcher(parts.get("xl/charts/chart1.xml"));
    assertTrue(cells.results().allMatch(cell -> cell.group(1).startsWith("Client!$")));
    assertTrue(cells.reset().find());
    assertTrue(PackageText.parts(plan.plan()).get("xl/workbook.xml").contains("<definedName "));
  }
}
