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

/** The rows under the first line of the first sheet, which say all that is wrong. */
final class VerdictTest {
  private static final int ROWS = 5;

  /** What a row leads to: column A of the checks, so many rows under a cell. */
  private static final Pattern PLACE =
      Pattern.compile("^HYPERLINK\\(\"#Checks!A\"&ROW\\(Checks!A(\\d+)\\)\\+MOD\\(A\\d+,1000\\),");

  private static TrialBrief inch() {
    return TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
  }

  /** The row {@code number} of these, from 1. */
  private static XSSFRow row(SheetValues sheet, int number) {
    XSSFCell flag = sheet.cells("check_flag").get(0);
    return flag.getSheet().getRow(flag.getRowIndex() + number);
  }

  /** Column {@code column} of these rows, from 0. */
  private static List<Object> rows(SheetValues sheet, int column) {
    return IntStream.rangeClosed(1, ROWS)
        .mapToObj(row -> row(sheet, row).getCell(column))
        .map(sheet::value)
        .toList();
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
    List<Object> said = rows(sheet, 1);
    assertTrue(said.get(0).toString().startsWith("“Frill fabric width” must be"), said.toString());
    assertTrue(said.get(0).toString().endsWith(" (Brief B15)"), said.toString());
    assertTrue(said.get(1).toString().startsWith("No ring fits"), said.toString());
    assertEquals(List.of("", "", ""), said.subList(2, 5));
  }

  /** 58 in: interfacing, base fabric and matching discs are too narrow, in the order of checks. */
  @Test
  void everyCheckThatFailsHasARow() {
    SheetValues sheet = Trials.given(inch().with("diameter", 58.0).with("cheaper_share", 1.0));
    List<String> starts = List.of("The frill fabric", "The base fabric", "The interfacing");
    List<Object> said = rows(sheet, 1);
    for (int row = 0; row < starts.size(); row++) {
      assertTrue(said.get(row).toString().startsWith(starts.get(row)), said.toString());
    }
    assertEquals(List.of("", ""), said.subList(3, 5));
    assertEquals(0.0, rows(sheet, 0).get(3));
  }

  @Test
  void whatFindsNoRoomIsCounted() {
    TrialBrief brief = inch();
    for (String name :
        List.of("diameter", "quantity", "fullness", "selvage", "buy_step", "hourly_rate")) {
      brief = brief.with(name, null);
    }
    assertEquals("and 2 more: see Checks", rows(Trials.given(brief), 1).get(4));
  }

  @Test
  void whereAllIsWellThatIsAllThatIsSaid() {
    assertEquals(List.of("Every check passes.", "", "", "", ""), rows(Trials.given(inch()), 1));
  }

  /** On the checks every input has a row, and every check of parts; A is the column of labels. */
  @Test
  void eachRowLeadsToTheCheckItSays() {
    SheetValues sheet = Trials.given(inch().with("centre_gap", 8.0).with("fabric_width", -1.0));
    List<String> failing = List.of("Frill fabric width", "Rings fit");
    for (int rank = 0; rank < failing.size(); rank++) {
      XSSFRow row = row(sheet, rank + 1);
      Matcher place = PLACE.matcher(row.getCell(1).getCellFormula());
      assertTrue(place.find(), row.getCell(1).getCellFormula());
      int above = Integer.parseInt(place.group(1));
      int number = (int) ((Double) sheet.value(row.getCell(0)) % 1000);
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
        row(sheet, ROWS).getCell(1).getHyperlink().getLocation());
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
