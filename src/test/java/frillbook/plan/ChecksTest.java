package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import frillbook.Briefs;
import frillbook.naming.NamedValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ChecksTest {
  private static final List<String> ALL =
      List.of(
          "inputs_ok",
          "rows_fit",
          "disc_fits_fabric",
          "strips_fit_fabric",
          "base_fits_fabric",
          "order_is_workable",
          "interfacing_fits",
          "margin_is_possible",
          "rings_clear_inset",
          "rings_have_room",
          "edge_holds",
          "rows_cover_base",
          "foam_fits");

  /** The checks that {@code briefs} fails, by name. */
  private static List<String> failed(Briefs briefs) {
    Map<String, Object> checks = NamedValues.of(Plan.of(briefs.brief()).checks()).lines();
    return ALL.stream().filter(name -> checks.get(name).equals(0.0)).toList();
  }

  /** Where no price can be asked, nothing can be shown to a client. */
  private static final List<String> NO_PRICE = List.of("price_ok", "client_ok");

  private static final List<String> NO_CUTTING =
      List.of("fabric_ok", "making_ok", "cost_ok", "price_ok", "looks_ok", "client_ok");

  /** What {@code plan} cannot say. */
  private static List<String> heldBack(Plan plan) {
    Map<String, Object> guards = NamedValues.of(plan.guards()).lines();
    return guards.keySet().stream().filter(name -> guards.get(name).equals(0.0)).toList();
  }

  private static void assertStops(String check, List<String> heldBack, Briefs briefs) {
    Plan plan = Plan.of(briefs.brief());
    assertEquals(List.of(check), failed(briefs));
    assertFalse(plan.checks().planOk());
    assertEquals(Plan.Flag.STOP, plan.checkFlag());
    assertEquals(heldBack, heldBack(plan));
  }

  /** The plan is complete, down to a price, and says what wants a second look. */
  private static Plan lookedAt(String check, Briefs briefs) {
    Plan plan = Plan.of(briefs.brief());
    assertEquals(List.of(check), failed(briefs));
    assertEquals(Plan.Flag.LOOK_AGAIN, plan.checkFlag());
    assertEquals(List.of(), heldBack(plan));
    return plan;
  }

  @Test
  void aSensibleBriefPassesAll() {
    Plan plan = Plan.of(Briefs.inch().brief());
    assertEquals(List.of(), failed(Briefs.inch()));
    assertEquals(Plan.Flag.READY, plan.checkFlag());
    assertEquals(List.of(), heldBack(plan));
  }

  /** By hand: 4 ÷ 2 − 1/2 − 1 leaves 1/2 in, less than a spacing. */
  @Test
  void rowsMustFitBetweenGapAndEdge() {
    List<String> held = new ArrayList<>(List.of("shape_ok", "strip_ok"));
    held.addAll(NO_CUTTING);
    assertStops("rows_fit", held, Briefs.inch().with("diameter", 4).with("centre_gap", 1));
  }

  /** By hand: a matching disc is 19 7/8 across, the fabric 20 1/2 less two selvages of 1/2. */
  @Test
  void matchingDiscsTooWideForTheFrillFabricWantASecondLook() {
    Briefs tooNarrow = Briefs.inch().with("fabric_width", 20.5);
    Plan plan = lookedAt("disc_fits_fabric", tooNarrow);
    assertEquals(1, plan.sizes().discs().baseMatchingCount());
    assertEquals(List.of(), failed(tooNarrow.with("matching_disc_fabric", "base")));
    assertEquals(List.of(), failed(tooNarrow.with("matching_discs", 0)));
    assertEquals(List.of(), failed(Briefs.inch().with("fabric_width", 20.875)));
  }

  /** By hand: strips under 30 in are not joined, 30 1/2 less two selvages of 1/2 is 29 1/2. */
  @Test
  void aStripWorthJoiningMustFitItsFabric() {
    Briefs longPieces = Briefs.inch().with("shortest_piece", 30);
    assertStops("strips_fit_fabric", NO_CUTTING, longPieces.with("fabric_width", 30.5));
    assertEquals(List.of(), failed(longPieces.with("fabric_width", 31)));
  }

  /** By hand: a base is 19 7/8 across. */
  @Test
  void aBaseWiderThanItsFabricWantsASecondLook() {
    lookedAt("base_fits_fabric", Briefs.inch().with("base_fabric_width", 20.5));
    assertEquals(List.of(), failed(Briefs.inch().with("base_fabric_width", 20.875)));
  }

  /**
   * By hand: π × 8.5² ÷ 0.75 × 2.5 × 2.25 ÷ 53 = 32.1 in of fabric for one cushion; 10 000 steps of
   * 0.1 in hold 31 of them.
   */
  @Test
  void anOrderMustBeSmallEnoughToSearch() {
    Briefs finelySold = Briefs.inch().with("buy_step", .1);
    assertStops("order_is_workable", NO_CUTTING, finelySold.with("quantity", 32));
    assertEquals(List.of(), failed(finelySold.with("quantity", 31)));
  }

  /** By hand: a base is 19 7/8 across. */
  @Test
  void interfacingNarrowerThanABaseWantsASecondLook() {
    lookedAt("interfacing_fits", Briefs.inch().with("interfacing_width", 19.75));
    assertEquals(List.of(), failed(Briefs.inch().with("interfacing_width", 19.875)));
    Briefs none = Briefs.inch().with("interfaced", "none");
    assertEquals(List.of(), failed(none.with("interfacing_width", 19.75)));
  }

  /** A margin of 100 % divides the cost by nothing; a markup of 100 % doubles it. */
  @Test
  void aMarginMustLeaveSomethingForTheCost() {
    Briefs margin = Briefs.inch().with("profit_basis", "margin");
    assertStops("margin_is_possible", NO_PRICE, margin.with("profit_rate", 1));
    assertEquals(List.of(), failed(margin.with("profit_rate", .95)));
    assertEquals(List.of(), failed(Briefs.inch().with("profit_rate", 1)));
  }

  /** Rings are 3/4 in apart: a frill as high just reaches from one to the next. */
  @Test
  void aFrillLowerThanTheSpacingWantsASecondLook() {
    lookedAt("rows_cover_base", Briefs.inch().with("frill_height", .625));
    assertEquals(List.of(), failed(Briefs.inch().with("frill_height", .75)));
  }

  /** By hand: ring 2 ends 1/2 + 2 × 3/4 = 2 in from the centre; 2 × 0.375 is 3/4 in. */
  @Test
  void aFrillTooScantToLieDownWantsASecondLook() {
    lookedAt("rows_cover_base", Briefs.inch().with("fullness", 1.37));
    assertEquals(List.of(), failed(Briefs.inch().with("fullness", 1.375)));
  }

  @Test
  void anInsetAsWideAsTheSpacingStops() {
    assertStops("rings_clear_inset", NO_CUTTING, Briefs.inch().with("stitch_inset", .75));
  }

  /** By hand: 3/4 − 1/2 = 1/4 in; 2 cm − 1.4 cm = 6 mm. */
  @Test
  void aPresserFootWantsAQuarterInchBesideTheRawEdge() {
    lookedAt("rings_have_room", Briefs.inch().with("stitch_inset", .505));
    assertEquals(List.of(), failed(Briefs.inch().with("stitch_inset", .5)));
    Briefs cm = Briefs.inch().inMillimetres().with("ring_spacing", 2);
    lookedAt("rings_have_room", cm.with("stitch_inset", 1.41));
    assertEquals(List.of(), failed(cm.with("stitch_inset", 1.4)));
  }

  /** By hand: 3/4 in are 19.05 mm, 2.5 layers of 7.62 mm or five of 3.81 mm. */
  @Test
  void gathersThickerThanTheSpacingWantASecondLook() {
    lookedAt("rings_have_room", Briefs.inch().with("fabric_thickness", 7.7));
    assertEquals(List.of(), failed(Briefs.inch().with("fabric_thickness", 7.62)));
    Briefs folded = Briefs.inch().with("edge_finish", "folded");
    lookedAt("rings_have_room", folded.with("fabric_thickness", 3.9));
    assertEquals(List.of(), failed(folded.with("fabric_thickness", 3.81)));
  }

  /** By hand: half of 18 in is 9; loose fibre has no thickness of its own. */
  @Test
  void foamThickerThanHalfTheDiameterWantsASecondLook() {
    Briefs foam = Briefs.inch().with("filling", "foam_disc");
    lookedAt("foam_fits", foam.with("foam_thickness", 9.01));
    assertEquals(List.of(), failed(foam.with("foam_thickness", 9)));
    assertEquals(List.of(), failed(Briefs.inch().with("foam_thickness", 9.01)));
  }

  @Test
  void aRawEdgeFraysOnStraightGrainAlone() {
    Briefs raw = Briefs.inch().with("edge_finish", "raw");
    lookedAt("edge_holds", raw);
    lookedAt("edge_holds", raw.with("grain", "lengthwise"));
    assertEquals(List.of(), failed(raw.with("grain", "bias")));
  }
}
