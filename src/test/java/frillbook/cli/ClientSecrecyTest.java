package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the client's page keeps to the maker: every part of the package is read for it. */
class ClientSecrecyTest {
  /** Figures that nothing else on the page can come to. */
  private static final String[] TELL_TALES = {
    "--set=quantity=3",
    "--set=price_frill_cloth=23.71",
    "--set=price_base_cloth=13.57",
    "--set=price_interfacing=7.83",
    "--set=price_zip=4.19",
    "--set=price_fill=11.47",
    "--set=price_thread=5.87",
    "--set=price_extra_one=3.917",
    "--set=extra_one_needed=7.31",
    "--set=extra_one_step=0.731",
    "--set=hourly_rate=41.37",
    "--set=overhead_rate=0.317",
    "--set=profit_rate=0.273",
    "--set=tax_rate=0.0825",
    "--set=deposit_rate=0.4",
    "--set=tidy_step=0",
    "--set=offer_each=219.43",
    "--set=gather_rate=3.719",
    "--set=sew_rows_rate=4.283",
    "--set=fill_close_setup=6.613"
  };

  private static final Pattern WORDS_OF_MONEY_AND_TIME =
      Pattern.compile(
          "wage|markup|margin|overhead|profit|hour|minute|cost|supplier|labour|rate\\b|bargain"
              + "|lowest|net\\b");

  @TempDir private static Path folder;

  private static Typed plan;
  private static List<String> said;

  @BeforeAll
  static void writePage() throws IOException {
    plan = Typed.made(folder, TELL_TALES);
    plan.pageWritten().close();
    said = PackageText.said(plan.page());
  }

  @Test
  void noPriceRateHourOrCostOfTheMakerIsInAnyPart() throws IOException {
    assertEquals(Set.of(), Secrets.of(plan.plan()).toldIn(said));
  }

  @Test
  void theSearchFindsTheSecretsWhereTheyAre() throws IOException {
    Secrets secrets = Secrets.of(plan.plan());
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
    for (String wanted : List.of("3 round cushions", "8.25 %", "40 %", "30 days", "Signed")) {
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
            "xl/sharedStrings.xml",
            "xl/styles.xml",
            "xl/workbook.xml",
            "xl/worksheets/sheet1.xml"),
        PackageText.parts(plan.page()).keySet());
  }

  @Test
  void thereIsNoFormulaNoNameNoCommentAndNoLink() throws IOException {
    Map<String, String> parts = PackageText.parts(plan.page());
    for (Map.Entry<String, String> part : parts.entrySet()) {
      for (String element : List.of("<f>", "<f ", "definedName", "comment", "External", "<!--")) {
        assertFalse(part.getValue().contains(element), element + " in " + part.getKey());
      }
    }
    assertTrue(PackageText.parts(plan.plan()).get("xl/workbook.xml").contains("<definedName "));
  }
}
