package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;

/** What a sheet says that has nothing to show. */
final class MissingPlanTest {

  private static TrialBrief inch() {
    return TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
  }

  /** The sentences that send the reader to the checks, by sheet; not those of the first sheet. */
  private static Map<String, String> said(TrialBrief brief) {
    SheetValues sheet = Trials.given(brief);
    Map<String, String> said = new TreeMap<>();
    for (XSSFCell cell : Trials.workbook(Trials.INCH).formulaCells()) {
      if (sheet.value(cell) instanceof String words && words.endsWith("see Checks.")) {
        said.merge(cell.getSheet().getSheetName(), words, (one, other) -> one + " " + other);
      }
    }
    return said;
  }

  /**
   * A gap of 8 3/4 in about the centre leaves less than nothing of a radius of 9 in less clearance.
   */
  @Test
  void everySheetThatIsEmptySaysWhatIsMissing() {
    Map<String, String> expected =
        new TreeMap<>(
            Map.of(
                "Method",
                "There is no cutting plan yet, so much is left out here: see Checks.",
                "Rings",
                "There are no rings yet: see Checks. There is no line to draw yet: see Checks.",
                "Cutting",
                "There is no cutting plan yet: see Checks.",
                "Shopping",
                "There is no shopping list yet: see Checks.",
                "Money",
                "There is no price yet: see Checks.",
                "For the client",
                "There are no choices yet: see Checks.",
                "Client",
                "There is no page for the client yet: see Checks."));
    assertEquals(expected, said(inch().with("centre_gap", 8.75)));
  }

  @Test
  void withoutAWageAllThatHasAPriceSaysSo() {
    String none = "There is no price yet: see Checks.";
    assertEquals(
        new TreeMap<>(
            Map.of(
                "Money",
                none,
                "Shopping",
                none,
                "For the client",
                none,
                "Client",
                "There is no page for the client yet: see Checks.")),
        said(inch().with("hourly_rate", null)));
  }

  @Test
  void aWholePlanSendsNobodyToTheChecks() {
    assertEquals(Map.of(), said(inch()));
  }
}
