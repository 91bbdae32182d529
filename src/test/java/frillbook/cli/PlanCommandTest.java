package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import frillbook.reading.PackagedTemplates;
import frillbook.template.ColumnTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PlanCommandTest {
  private static final DecimalFormatSymbols ROOT = DecimalFormatSymbols.getInstance(Locale.ROOT);

  private static final WorkbookTemplate TEMPLATE = PackagedTemplates.template();

  @Test
  void thePlanBeginsWithTheResultsOfTheFirstSheet() {
    Ran ran = Ran.runSmall("plan");
    // Worked out at Ran.SMALL; 4π is 12.57, which is 100.5 eighths.
    assertEquals(
        """
        Spiral-frill cushion
        All checks              READY
        Frill fabric to buy      4 1/2  in     (11.4 cm)
        Base fabric to buy           9  in     (22.9 cm)
        Strips to cut                1  strip
        Cut strips this wide     2 1/4  in     (5.7 cm)
        Cut bases this wide      5 1/4  in     (13.3 cm)
        Joins                        0  joins
        Strip before gathering  26 1/8  in     (66.4 cm)
        Stitched length         12 5/8  in     (31.9 cm)
        Turns                     2.00  turns
        Rings                        2  rings
        """,
        ran.out().substring(0, ran.out().indexOf("\n\n") + 1));
    assertEquals("", ran.err());
    assertEquals(0, ran.exitCode());
  }

  /**
   * Circles of radius 1/2 and 1 1/2, on a base that sewing draws in by 4 % at 0.521 and 1.5625; on
   * the strip marks at 1/2 (half the end allowance) + 2 × length. To the eighth, what is under 4 in
   * to the sixteenth: 2π·½ = 3.142, 2π·1½ = 9.425, together 12.566; ½ + 2π = 6.783, ½ + 8π =
   * 25.633. Further columns may stand behind these.
   */
  @Test
  void theRingsStandInATable() {
    String head =
        "Ring  Radius, in  Mark at radius, in  This ring, in  Stitched so far, in  Strip mark, in";
    List<String> lines = Ran.runSmall("plan").out().lines().toList();
    List<String> table = lines.stream().dropWhile(line -> !line.startsWith(head)).limit(3).toList();
    assertEquals(
        List.of(
            head,
            "   1         1/2                 1/2          3 1/8                3 1/8           6 3/4",
            "   2       1 1/2              1 9/16          9 3/8               12 5/8          25 5/8"),
        table.stream().map(line -> line.substring(0, head.length())).toList());
  }

  /**
   * By hand: the edge of 4 in is π × 4 = 12.566 in, 0.349 yd or 0.319 m; at 4 minutes a metre, 3.66
   * a yard, 1.28, and 5 to set up.
   */
  @Test
  void aTableThatStandsElsewhereIsPrintedWhereItIsShown() {
    List<String> lines = Ran.runSmall("plan").out().lines().toList();
    String edge =
        lines.stream()
            .filter(line -> line.startsWith("sew the edge seam"))
            .findFirst()
            .orElseThrow();
    assertEquals(
        List.of("sew the edge seam", "0.35", "3.66", "1.28", "5", "6.28"),
        List.of(edge.split(" {2,}")));
  }

  @Test
  void everySheetOfThePlanIsPrinted() {
    List<String> lines = Ran.runSmall("plan").out().lines().toList();
    TEMPLATE.sheets().stream()
        .filter(sheet -> sheet.plan())
        .forEach(sheet -> assertTrue(lines.contains(sheet.title()), sheet.title()));
  }

  @Test
  void jsonHasTheUnitAndEveryInput() {
    JsonNode plan = Ran.runSmall("plan", "--json").json();
    assertEquals("in", plan.get("unit").textValue());
    assertEquals("USD", plan.get("currency").textValue());
    assertEquals(
        TEMPLATE.inputs().stream().map(InputTemplate::name).toList(), names(plan.get("inputs")));
    assertEquals(4, plan.at("/inputs/diameter").doubleValue());
    assertEquals("rings", plan.at("/inputs/row_style").textValue());
  }

  @Test
  void jsonHasEveryLineUnderItsName() {
    JsonNode lines = Ran.runSmall("plan", "--json").json().get("lines");
    assertEquals(TEMPLATE.lines().stream().map(LineTemplate::name).toList(), names(lines));
    // Exact, as at Ran.SMALL.
    assertEquals(8 * Math.PI + 1, lines.get("flat_length").doubleValue(), 1e-12);
    assertEquals(2.25, lines.get("strip_cut_width").doubleValue());
    assertEquals("ready", lines.get("check_flag").textValue());
  }

  @Test
  void jsonHasEveryColumnOfEveryTable() {
    JsonNode crosswise = Ran.run("plan", "--json").json().get("tables");
    JsonNode bias =
        Ran.run("plan", "--json", "--input=grain=bias", "--input=quantity=2").json().get("tables");
    assertEquals(TEMPLATE.tables().stream().map(TableTemplate::name).toList(), names(crosswise));
    for (TableTemplate table : TEMPLATE.tables()) {
      // Choices are tried in the grain of the plan alone, strips all alike for several cushions.
      JsonNode rows = crosswise.get(table.name()).isEmpty() ? bias : crosswise;
      assertFalse(rows.get(table.name()).isEmpty(), table.name());
      assertEquals(
          table.columns().stream().map(ColumnTemplate::name).toList(),
          names(rows.get(table.name()).get(0)),
          table.name());
    }
  }

  /** The figures beside each grain, put into the sentence by hand. */
  @Test
  void aCheaperGrainIsToldWithWhatItSaves() {
    String[] words = {"plan", "--json", "--input=quantity=12", "--input=cheaper_share=1%"};
    Ran ran = Ran.run(words);
    JsonNode lines = ran.json().get("lines");
    double own = lines.get("price_total").doubleValue();
    double saves = own - lines.get("lengthwise_price").doubleValue();
    assertEquals("lengthwise", lines.get("cheapest_grain").textValue());
    String share = new DecimalFormat("0.#", ROOT).format(100 * saves / own);
    String money = new DecimalFormat("0.00", ROOT).format(saves);
    assertEquals(
        "Lengthwise would cost " + money + " USD less (" + share + "%): see Brief.\n", ran.err());
    assertEquals("look_again", lines.get("check_flag").textValue());
  }

  @Test
  void jsonHasNullForWhatThereIsNot() {
    // Without matching discs the list of pieces has no size for them.
    JsonNode piece = Ran.runSmall("plan", "--json").json().at("/tables/cut_list/0");
    assertEquals("matching_disc", piece.get("cut_piece").textValue());
    assertEquals(0, piece.get("cut_count").doubleValue());
    assertTrue(piece.get("cut_length").isNull(), piece.toString());
  }

  @Test
  void partsThatDoNotFitAreToldAndThereIsNoPlan() {
    // 4/2 − 1/2 − 1 leaves half an inch for rings an inch apart.
    Ran refused =
        Ran.refusal(
            1,
            "No ring fits between the centre gap and the edge clearance. Make one of them, or the"
                + " ring spacing, smaller.");
    assertEquals(refused, Ran.runSmall("plan", "--input=centre_gap=1"));
    assertEquals(refused, Ran.runSmall("plan", "--json", "--input=centre_gap=1"));
  }

  @Test
  void everyPartThatDoesNotFitIsTold() {
    assertEquals(
        Ran.refusal(
            1,
            "No ring fits between the centre gap and the edge clearance. Make one of them, or the"
                + " ring spacing, smaller.",
            "The rings are no further apart than the stitch inset, so every raw edge would lie on the"
                + " row before. Space them wider."),
        Ran.runSmall("plan", "--input=centre_gap=1", "--input=stitch_inset=1"));
  }

  @Test
  void whatWantsASecondLookIsToldBesideThePlan() {
    Ran ran = Ran.runSmall("plan", "--input=edge_finish=raw");
    assertEquals(
        "A raw edge on straight grain frays. Choose another edge finish, or bias.\n", ran.err());
    assertEquals(0, ran.exitCode());
    assertTrue(ran.out().contains("All checks              LOOK AGAIN\n"), ran.out());
  }

  @Test
  void anotherArgumentIsRefused() {
    assertEquals(
        Ran.refusal(
            2,
            "Found \"extra\", and nothing more is expected here.",
            "'frillbook plan --help' lists what can be given."),
        Ran.run("plan", "extra"));
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** A base of 60 in and more is wider than interfacing of 36; fifty cannot be planned at all. */
  @Test
  void aCheckSaysNothingOfWhatIsNotPlanned() {
    String[] wide = {"plan", "--diameter", "60", "--input", "interfaced=base"};
    String[] tooMuch = {
      "plan",
      "--diameter",
      "60",
      "--input",
      "interfaced=base",
      "--ring-spacing",
      "0.25",
      "--input",
      "quantity=50"
    };
    assertTrue(Ran.run(wide).err().contains("The interfacing is narrower than a base"));
    String told = Ran.run(tooMuch).err();
    assertTrue(told.contains("The order takes more fabric than can be planned"), told);
    assertFalse(told.contains("The interfacing is narrower than a base"), told);
  }
}
