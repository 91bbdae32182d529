package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;

/** What the first sheet says of failing checks: the first beside the flag, all under the flower. */
final class VerdictTest {
  /** The list begins in the row of the fullness. */
  private static final String FIRST_ROW = "fullness";

  /** Sentences that find room there, each two rows high. */
  private static final int ROWS = 4;

  private static final int ROWS_EACH = 2;

  /** Column C, beside the flag. */
  private static final int FLAG_SENTENCE = 2;

  /** Columns G and H of the list. */
  private static final int LEVEL = 6;

  private static final int SENTENCE = 7;

  /** What a row leads to: column A of the checks, so many rows under a cell. */
  private static final Pattern PLACE =
      Pattern.compile("^HYPERLINK\\(\"#Checks!A\"&ROW\\(Checks!A(\\d+)\\)\\+MOD\\(G\\d+,1000\\),");

  private static TrialBrief inch() {
    return TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
  }

  /** A margin that no price has is a stop that nothing but money waits for. */
  private static TrialBrief stopped() {
    return inch().with("profit_basis", "margin").with("profit_rate", 0.96);
  }

  /** The row of sentence {@code number} in the list, from 1; after the last, what has no room. */
  private static XSSFRow row(SheetValues sheet, int number) {
    XSSFCell first = sheet.cells(FIRST_ROW).get(0);
    return first.getSheet().getRow(first.getRowIndex() + (number - 1) * ROWS_EACH);
  }

  /** One column of the list. */
  private static List<Object> rows(SheetValues sheet, int column) {
    return IntStream.rangeClosed(1, ROWS)
        .mapToObj(row -> row(sheet, row).getCell(column))
        .map(sheet::value)
        .toList();
  }

  private static String more(SheetValues sheet) {
    return sheet.value(row(sheet, ROWS + 1).getCell(SENTENCE)).toString();
  }

  private static String besideTheFlag(SheetValues sheet) {
    return sheet.value(sheet.cells("check_flag").get(0).getRow().getCell(FLAG_SENTENCE)).toString();
  }

  /** What stops is said before what only wants a second look, each in the order of the checks. */
  @Test
  void whatStopsIsSaidFirst() {
    SheetValues sheet =
        Trials.given(
            inch()
                .with("frill_height", 0.625)
                .with("edge_finish", "raw")
                .with("centre_gap", 8.0)
                .with("fabric_width", -1.0));
    List<Object> said = rows(sheet, SENTENCE);
    assertTrue(said.get(0).toString().startsWith("Frill fabric width must be"), said.toString());
    assertTrue(said.get(0).toString().endsWith(" (Brief B10)"), said.toString());
    assertTrue(said.get(1).toString().startsWith("No ring fits"), said.toString());
    assertEquals(List.of("", ""), said.subList(2, ROWS));
  }

  /** 58 in: matching discs, base fabric and interfacing are too narrow, in the order of checks. */
  @Test
  void everyCheckThatFailsHasARow() {
    SheetValues sheet = Trials.given(stopped().with("diameter", 58.0));
    List<String> starts =
        List.of("A margin", "The frill fabric", "The base fabric", "The interfacing");
    List<Object> said = rows(sheet, SENTENCE);
    for (int row = 0; row < starts.size(); row++) {
      assertTrue(said.get(row).toString().startsWith(starts.get(row)), said.toString());
    }
    assertEquals("", more(sheet));
  }

  /** The first thousands are stops, the second what wants a second look; 0 is nothing. */
  @Test
  void everyRowTellsItsLevel() {
    List<Object> levels =
        rows(Trials.given(stopped().with("base_fabric_width", 19.0)), LEVEL).stream()
            .map(code -> (Object) Math.floor((Double) code / 1000))
            .toList();
    assertEquals(List.of(1.0, 2.0, 0.0, 0.0), levels);
  }

  /** The three that are too narrow at 58 in; the picture has no need to give way to them. */
  @Test
  void whereNothingStopsOnlyTheFlagSpeaks() {
    SheetValues sheet = Trials.given(inch().with("diameter", 58.0).with("cheaper_share", 1.0));
    assertTrue(besideTheFlag(sheet).startsWith("The frill fabric"), besideTheFlag(sheet));
    assertTrue(besideTheFlag(sheet).endsWith(" (Brief B10) (1 of 3)"), besideTheFlag(sheet));
    assertEquals(List.of("", "", "", ""), rows(sheet, SENTENCE));
    assertEquals("", more(sheet));
  }

  /** Six cells are empty, and four sentences find room. */
  @Test
  void whatFindsNoRoomIsCounted() {
    TrialBrief brief = inch();
    for (String name :
        List.of("diameter", "quantity", "fullness", "selvage", "buy_step", "hourly_rate")) {
      brief = brief.with(name, null);
    }
    SheetValues sheet = Trials.given(brief);
    assertEquals("and 2 more: see Checks", more(sheet));
    assertEquals(
        "Finished diameter must be a number from 4 to 60 in (Brief B5) (1 of 6)",
        besideTheFlag(sheet));
  }

  @Test
  void whereAllIsWellThatIsAllThatIsSaid() {
    SheetValues sheet = Trials.given(inch());
    assertEquals("Every check passes.", besideTheFlag(sheet));
    assertEquals(List.of("", "", "", ""), rows(sheet, SENTENCE));
    assertEquals("", more(sheet));
  }

  /** On the checks every input has a row, and every check of parts; A is the column of labels. */
  @Test
  void eachRowLeadsToTheCheckItSays() {
    SheetValues sheet = Trials.given(inch().with("centre_gap", 8.0).with("fabric_width", -1.0));
    List<String> failing = List.of("Frill fabric width", "Rings fit");
    for (int rank = 0; rank < failing.size(); rank++) {
      XSSFRow row = row(sheet, rank + 1);
      Matcher place = PLACE.matcher(row.getCell(SENTENCE).getCellFormula());
      assertTrue(place.find(), row.getCell(SENTENCE).getCellFormula());
      int above = Integer.parseInt(place.group(1));
      int number = (int) ((Double) sheet.value(row.getCell(LEVEL)) % 1000);
      XSSFSheet checks = sheet.cells("check_fault").get(0).getSheet();
      String label = checks.getRow(above + number - 1).getCell(0).getStringCellValue();
      assertEquals(failing.get(rank), label);
    }
  }

  @Test
  void howManyMoreLeadsToTheFirstCheck() {
    SheetValues sheet = Trials.given(inch());
    XSSFCell first = sheet.cells("check_fault").get(0);
    assertEquals(
        first.getSheet().getSheetName() + "!" + first.getReference(),
        row(sheet, ROWS + 1).getCell(SENTENCE).getHyperlink().getLocation());
  }

  /** Each label on the checks leads to the cell of its input. */
  @Test
  void labelsLeadToTheCells() {
    SheetValues sheet = Trials.given(inch());
    XSSFSheet checks = sheet.cells("check_fault").get(0).getSheet();
    Trials.TEMPLATE.checkedInputs().stream()
        .map(input -> sheet.cells(input.name()).get(0))
        .forEach(cell -> assertTrue(leads(checks, cell), cell.getReference()));
  }

  private static boolean leads(XSSFSheet checks, XSSFCell cell) {
    String place = cell.getSheet().getSheetName() + "!" + cell.getReference();
    return checks.getHyperlinkList().stream()
        .anyMatch(link -> link.getLocation().replace("'", "").equals(place));
  }
}
