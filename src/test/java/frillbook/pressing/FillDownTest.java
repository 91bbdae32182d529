package frillbook.pressing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Shared formulas as ISO/IEC 29500-1, 18.3.1.40, has them; by hand. */
final class FillDownTest {
  private static final Pattern F = Pattern.compile("<f[^>]*/>|<f[^>/]*>[^<]*</f>");

  /** What becomes of {@code formulas} in column A from row 3 downwards. */
  private static List<String> shared(String... formulas) {
    StringBuilder sheet = new StringBuilder("<worksheet><sheetData>");
    for (int i = 0; i < formulas.length; i++) {
      int row = 3 + i;
      sheet.append(
          "<row r=\"%d\"><c r=\"A%d\"><f>%s</f></c></row>".formatted(row, row, formulas[i]));
    }
    return sharedOf(sheet);
  }

  private static List<String> sharedOf(StringBuilder sheet) {
    byte[] bytes =
        sheet.append("</sheetData></worksheet>").toString().getBytes(StandardCharsets.UTF_8);
    String written = new String(FillDown.share(bytes), StandardCharsets.UTF_8);
    return F.matcher(written).results().map(found -> found.group()).toList();
  }

  @Test
  void theFirstCellHoldsTheFormulaAndTheAreaOfAllThatShareIt() {
    assertEquals(
        List.of(
            "<f t=\"shared\" ref=\"A3:A5\" si=\"0\">$B3*width+C2</f>",
            "<f t=\"shared\" si=\"0\"/>",
            "<f t=\"shared\" si=\"0\"/>"),
        shared("$B3*width+C2", "$B4*width+C3", "$B5*width+C4"));
  }

  @Test
  void anotherFormulaBeginsAnew() {
    assertEquals(
        List.of(
            "<f t=\"shared\" ref=\"A3:A4\" si=\"0\">B3</f>",
            "<f t=\"shared\" si=\"0\"/>",
            "<f t=\"shared\" ref=\"A5:A6\" si=\"1\">B4</f>",
            "<f t=\"shared\" si=\"1\"/>"),
        shared("B3", "B4", "B4", "B5"));
  }

  /** Two tables of two columns: A3:B4 and A6:B7. */
  @Test
  void sharesAreCountedAlongTheRows() {
    StringBuilder sheet = new StringBuilder("<worksheet><sheetData>");
    for (int row : List.of(3, 4, 6, 7)) {
      sheet.append(
          "<row r=\"%1$d\"><c r=\"A%1$d\"><f>C%1$d</f></c><c r=\"B%1$d\"><f>D%1$d</f></c></row>"
              .formatted(row));
    }
    List<String> areas = sharedOf(sheet).stream().filter(f -> f.contains("ref=")).toList();
    assertEquals(
        List.of(
            "<f t=\"shared\" ref=\"A3:A4\" si=\"0\">C3</f>",
            "<f t=\"shared\" ref=\"B3:B4\" si=\"1\">D3</f>",
            "<f t=\"shared\" ref=\"A6:A7\" si=\"2\">C6</f>",
            "<f t=\"shared\" ref=\"B6:B7\" si=\"3\">D6</f>"),
        areas);
  }

  @Test
  void aFormulaThatIsNotFilledDownStaysAsItIs() {
    assertEquals(List.of("<f>B3</f>", "<f>B3</f>"), shared("B3", "B3"));
  }

  @Test
  void rowsThatStayPutAreNotCountedFromTheCell() {
    assertEquals(
        List.of("<f t=\"shared\" ref=\"A3:A4\" si=\"0\">$B$9*B3</f>", "<f t=\"shared\" si=\"0\"/>"),
        shared("$B$9*B3", "$B$9*B4"));
  }

  @Test
  void wordsAndFunctionsThatLookLikeCellsAreNotCells() {
    assertEquals(
        List.of("<f>\"B3\"&amp;LOG10(2)</f>", "<f>\"B4\"&amp;LOG10(2)</f>"),
        shared("\"B3\"&amp;LOG10(2)", "\"B4\"&amp;LOG10(2)"));
    assertTrue(shared("LOG10(B3)+b_12", "LOG10(B4)+b_12").get(0).contains("ref=\"A3:A4\""));
  }

  @Test
  void formulasWithCellsOfOtherSheetsAreLeftAlone() {
    assertEquals(List.of("<f>Brief!B3</f>", "<f>Brief!B4</f>"), shared("Brief!B3", "Brief!B4"));
  }
}
