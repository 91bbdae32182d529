package frillbook.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.chart.Bunting;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is written about another sheet leads there. */
final class SpokenOfTest {
  private static final Path SMALL = Path.of("src/test/resources/templates/small");

  private static final SheetTemplate BRIEF = Bunting.TEMPLATE.sheets().get(0);

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "The sheet Words has them all., Words",
    "See Checks., Checks",
    "One of Checks; see Flag by flag and the sheet Words, Flag by flag",
    "as on the Checks, Checks",
  })
  void aSheetIsSpokenOf(String text, String sheet) {
    assertEquals(Optional.of(sheet), Bunting.TEMPLATE.spokenOf(text, BRIEF));
  }

  /** Other words, another case, a longer word, and the sheet that it stands on. */
  @ParameterizedTest
  @CsvSource({
    "Words to be read.",
    "see words",
    "See Checksum",
    "See the sheet Brief",
    "foresee Words"
  })
  void noSheetIsSpokenOf(String text) {
    assertEquals(Optional.empty(), Bunting.TEMPLATE.spokenOf(text, BRIEF));
  }

  private void copy(Map<String, String> instead) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(SMALL)) {
      files = all.toList();
    }
    for (Path file : files) {
      String text = Files.readString(file);
      for (Map.Entry<String, String> each : instead.entrySet()) {
        text = text.replace(each.getKey(), each.getValue());
      }
      Files.writeString(folder.resolve(file.getFileName()), text);
    }
  }

  /**
   * An input, a line and a paragraph of a template of one's own, and nothing else on its sheet:
   * what does not fit on one line, LibreOffice would cut off there.
   */
  @Test
  void whatSpeaksOfASheetLeadsThere() throws IOException {
    copy(
        Map.of(
            "How many of the same length.", "How many; see Checks.",
            "Under a tenth looks full.", "The sheet Flag by flag has it.",
            "Half of what the flags leave.", "See Checks. " + "Half of what is left. ".repeat(8),
            "  - section: What it comes to", "  - note: All names stand on the sheet Words."));
    WorkbookTemplate template = TemplateReader.read(TemplateSource.directory(folder));
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      WorkbookSetting setting = new WorkbookSetting(LengthUnit.INCH, Map.of(), Paper.A4);
      new WorkbookCompiler().compileInto(workbook, template, setting);
      List<String> links =
          workbook.getSheet("Brief").getHyperlinkList().stream()
              .map(SpokenOfTest::said)
              .sorted()
              .toList();
      assertEquals(List.of("A10 Words!A1", "D15 'Flag by flag'!A1", "D6 Checks!A1"), links);
    }
  }

  private static String said(XSSFHyperlink link) {
    return link.getCellRef() + " " + link.getLocation();
  }
}
