package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.template.CheckLevel;
import frillbook.template.CheckTemplate;
import frillbook.template.Form;
import frillbook.wording.PlanWords;
import frillbook.wording.Sentence;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Briefs whose cells are all in range and do not go together. */
final class FailingChecksTest {
  /** Stops of what comes after the cutting of the frill fabric, or lies beside it. */
  private static final Set<String> BESIDE_THE_CUTTING = Set.of("margin_is_possible");

  private static TrialBrief inch() {
    return TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
  }

  /** For every check a brief in which it fails; what makes it fail is the brief's title. */
  private static Map<String, TrialBrief> failing() {
    TrialBrief bare = inch().with("matching_discs", 0.0);
    TrialBrief plain = bare.with("interfaced", "none").with("base_fabric_width", 72.0);
    TrialBrief huge =
        plain.with("diameter", 60.0).with("ring_spacing", 0.5).with("stitch_inset", 0.25);
    Map<String, TrialBrief> failing = new LinkedHashMap<>();
    failing.put("rows_fit", inch().with("centre_gap", 8.0));
    failing.put("disc_fits_fabric", inch().with("fabric_width", 19.0).with("cheaper_share", 1.0));
    failing.put("strips_fit_fabric", bare.with("fabric_width", 12.5));
    failing.put("base_fits_fabric", inch().with("base_fabric_width", 19.0));
    failing.put("order_is_workable", huge.with("quantity", 50.0).with("buy_step", 0.5));
    failing.put(
        "interfacing_fits", inch().with("interfaced", "base").with("interfacing_width", 19.0));
    failing.put(
        "margin_is_possible", inch().with("profit_basis", "margin").with("profit_rate", 0.96));
    // The spare strips take more fabric than the search looks through for so small a cushion.
    failing.put(
        "length_found",
        bare.with("grain", "lengthwise")
            .with("diameter", 5.0)
            .with("frill_height", 12.0)
            .with("fabric_width", 36.0)
            .with("spare_strips", 20.0));
    failing.put("rings_clear_inset", inch().with("stitch_inset", 0.75));
    failing.put("rings_have_room", inch().with("stitch_inset", 0.625).with("cheaper_share", 1.0));
    failing.put("edge_holds", inch().with("edge_finish", "raw"));
    failing.put("rows_cover_base", inch().with("frill_height", 0.625));
    failing.put("gathering_fits", inch().with("gathering_rows", 4.0));
    failing.put(
        "foam_fits",
        inch().with("filling", "foam_disc").with("diameter", 9.0).with("foam_thickness", 5.0));
    failing.put(
        "own_strips_are_lean",
        inch()
            .with("quantity", 3.0)
            .with("joined_by", "cushion")
            .with("grain", "bias")
            .with("fabric_width", 60.0)
            .with("cheaper_share", 1.0));
    failing.put("grain_is_cheap", inch().with("quantity", 12.0).with("cheaper_share", 0.01));
    failing.put("choices_agree", inch().with("choice_two_words", "Fuller"));
    // A date, 27 November 2026, that was typed for a wage.
    failing.put("price_is_plausible", inch().with("hourly_rate", 46_353.0));
    return failing;
  }

  static Stream<TrialBrief> briefs() {
    return failing().entrySet().stream().map(check -> check.getValue().titled(check.getKey()));
  }

  /** What the engine's values make of the message. */
  private static String said(TrialBrief brief, CheckTemplate check) {
    var form = Form.of(Trials.TEMPLATE);
    return new PlanWords(form.vocabulary(), brief.unit(), brief.inputs(), brief.planned())
        .say(new Sentence(check.message().wording(), Optional.empty()));
  }

  private static CheckTemplate check(String name) {
    return Trials.TEMPLATE.checks().stream()
        .filter(check -> check.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyCheckHasABriefInWhichItFails() {
    Set<String> checks =
        Trials.TEMPLATE.checks().stream()
            .map(CheckTemplate::name)
            .filter(name -> !name.equals(OvertypedPriceTest.CHECK))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(checks, new TreeSet<>(failing().keySet()));
  }

  /** Calculated once for all that is said of it. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("briefs")
  void theCheckAloneFailsAndTheEngineFindsTheSame(TrialBrief brief) {
    SheetValues sheet = Trials.given(brief);
    failsWithItsSentenceAndItsPartOfThePlanIsBlankWhereItStops(brief, sheet);
    noOtherFails(brief, sheet);
    assertEquals(0.0, brief.planned().lines().get(brief.title()), brief.toString());
    Comparison.of(Trials.TEMPLATE, brief, sheet).requireAgreement();
  }

  private static void failsWithItsSentenceAndItsPartOfThePlanIsBlankWhereItStops(
      TrialBrief brief, SheetValues sheet) {
    CheckTemplate check = check(brief.title());
    boolean stops = check.level() == CheckLevel.STOP;
    boolean cuts = !stops || BESIDE_THE_CUTTING.contains(brief.title());
    assertEquals((double) check.level().code(), sheet.value(check.name()), brief.toString());
    assertEquals(stops ? "STOP" : "LOOK AGAIN", sheet.value("check_flag"), brief.toString());
    XSSFCell change = sheet.cells(check.change().orElseThrow()).get(0);
    String place = change.getSheet().getSheetName() + " " + change.getReference();
    String message = said(brief, check) + " (" + place + ")";
    assertTrue(sheet.column("check_sentence").contains(message), message);
    assertEquals(cuts, !sheet.value("buy_length").equals(""), brief.toString());
    assertEquals(stops, sheet.value("price_each").equals(""), brief.toString());
    assertEquals(List.of(), Trials.errors(brief.unit()), brief.toString());
  }

  /** Every other check passes, so that it is this one that stops the plan. */
  private static void noOtherFails(TrialBrief brief, SheetValues sheet) {
    Set<String> failed =
        Trials.TEMPLATE.checks().stream()
            .map(CheckTemplate::name)
            .filter(name -> !sheet.value(name).equals(0.0))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(brief.title()), failed, brief.toString());
  }
}
