package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.chart.ChartColour;
import frillbook.press.Colour;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The colour of the fabric, from the command line into the file and on to the client's page. */
class ColourTest {
  @TempDir private Path folder;

  /** CSS Color Module Level 4, 6.1; five of them are not the colours of X11. */
  @ParameterizedTest
  @CsvSource({
    "2e8b57,2E8B57",
    "#B03a5b,B03A5B",
    "SeaGreen,2E8B57",
    "gray,808080",
    "grey,808080",
    "green,008000",
    "maroon,800000",
    "purple,800080",
    "rebeccapurple,663399",
    "lightgoldenrodyellow,FAFAD2"
  })
  void aColourIsTypedByDigitsOrByWord(String typed, String fill) {
    assertEquals(fill, new ColourName().convert(typed).fill());
  }

  @Test
  void allWordsOfCssAreKnown() {
    assertEquals(148, ColourName.words().size());
    ColourName.words().forEach((word, fill) -> assertTrue(fill.matches("[0-9A-F]{6}"), word));
  }

  /** Seven greys have two spellings, and two pairs of words share a colour. */
  @ParameterizedTest
  @CsvSource({
    "gray,grey",
    "darkgray,darkgrey",
    "darkslategray,darkslategrey",
    "dimgray,dimgrey",
    "lightgray,lightgrey",
    "lightslategray,lightslategrey",
    "slategray,slategrey",
    "aqua,cyan",
    "fuchsia,magenta"
  })
  void wordsThatMeanTheSameAreTheSame(String one, String other) {
    assertEquals(ColourName.words().get(one), ColourName.words().get(other));
  }

  @Test
  void anUnknownWordIsToldWithTheOneMeant() {
    assertEquals(
        Ran.refusal(
            2,
            "--colour: found \"crimsom\". Write six hex digits, such as B03A5B, or a colour word of"
                + " CSS, such as teal (did you mean crimson?).",
            "'frillbook make --help' lists what can be given."),
        Ran.run("make", "--colour", "crimsom"));
  }

  /** By hand: seven tenths of 2E, 8B and 57 are 32.2, 97.3 and 60.9. */
  @Test
  void linesHaveADarkerShade() {
    assertEquals("20613D", new Colour("2E8B57").line());
    assertEquals("000000", new Colour("000000").line());
  }

  @Test
  void theWorkbookAndTheClientsPageHaveTheColour() throws IOException {
    Path plan = folder.resolve("plan.xlsx");
    Path page = folder.resolve("page.xlsx");
    Ran.runSmall("make", "--colour=teal", "-o", plan.toString());
    assertEquals("008080", colour(plan));
    Ran.run("client", plan.toString(), "-o", page.toString());
    assertEquals("008080", colour(page));
    Ran.run("client", plan.toString(), "--colour=#123456", "--force", "-o", page.toString());
    assertEquals("123456", colour(page));
  }

  @Test
  void aWorkbookHasOurColourUnlessSomebodySaysOtherwise() throws IOException {
    Path plan = folder.resolve("plan.xlsx");
    Ran.runSmall("make", "-o", plan.toString());
    assertEquals(Colour.OURS.fill(), colour(plan));
  }

  private static String colour(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      Optional<Colour> colour = ChartColour.of(workbook);
      return colour.orElseThrow().fill();
    }
  }
}
