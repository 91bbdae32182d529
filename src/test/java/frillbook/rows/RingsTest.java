package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.Brief;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingsTest {
  private static final double TURN = 2 * Math.PI;

  private static Rings rings(Briefs briefs) {
    Brief brief = briefs.brief();
    return Rings.of(brief, RowSizes.of(brief.cushion()));
  }

  /** Rows out to the very edge of a cushion {@code diameter} across. */
  private static Briefs toTheEdge(double diameter, double spacing, double gap) {
    return Briefs.inch()
        .with("diameter", diameter)
        .with("ring_spacing", spacing)
        .with("centre_gap", gap)
        .with("edge_clearance", 0);
  }

  /** By hand: circles of radius 1, 2, 3, 4 add up to 2π × 10, and four laps of 1/2. */
  @Test
  void separateRingsAddUpAsByHand() {
    Rings rings = rings(toTheEdge(8, 1, 1).with("row_style", "rings").with("ring_lap", .5));
    assertEquals(4, rings.ringCount());
    assertEquals(TURN * 10 + 2, rings.stitchedLength(), 1e-12);
    assertEquals(
        List.of(1.0, 2.0, 3.0, 4.0), rings.rings().stream().map(Ring::ringRadius).toList());
  }

  /** By hand: 2π × 1 + 1/2, then 2π × 3 + 1, then 2π × 6 + 1 1/2. */
  @Test
  void ringsRunOnFromTheOneBefore() {
    List<Ring> rings = rings(toTheEdge(8, 1, 1).with("row_style", "rings")).rings();
    assertEquals(TURN + .5, rings.get(0).runningStitched(), 1e-12);
    assertEquals(TURN * 3 + 1, rings.get(1).runningStitched(), 1e-12);
    assertEquals(TURN * 6 + 1.5, rings.get(2).runningStitched(), 1e-12);
    assertEquals(TURN * 3 + .5, rings.get(2).ringLength(), 1e-12);
  }

  /** By hand: three times full at radius 2, 2 in further out 3 × 2 ÷ 4; at radius 4, 3 × 4 ÷ 6. */
  @Test
  void aFrillIsLessFullAtItsEdge() {
    Briefs briefs = toTheEdge(8, 1, 1).with("row_style", "rings").with("frill_height", 2);
    List<Ring> rings = rings(briefs.with("fullness", 3)).rings();
    assertEquals(1.5, rings.get(1).edgeFullness(), 1e-12);
    assertEquals(2, rings.get(3).edgeFullness(), 1e-12);
  }

  /** By hand: with no gap, circles of 3/4, 1 1/2, … up to 8 1/4 under 8 1/2: eleven. */
  @Test
  void ringsWithoutAGapBeginOneSpacingOut() {
    Rings rings = rings(Briefs.inch().with("row_style", "rings").with("centre_gap", 0));
    assertEquals(11, rings.ringCount());
    assertEquals(.75, rings.rings().get(0).ringRadius());
    assertEquals(8.25, rings.rings().get(10).ringRadius());
  }

  /** By hand: from 1/2 to 8 1/2 are 10.67 spacings of 3/4, so an eleventh turn is begun. */
  @Test
  void aSpiralCountsTheTurnItDoesNotFinish() {
    Rings rings = rings(Briefs.inch());
    assertEquals(11, rings.ringCount());
    assertEquals(8.5, rings.rings().get(10).ringRadius());
  }

  /** By hand: from the gap of 1/2 outward by 3/4, the last turn cut short at 8 1/2. */
  @Test
  void everyTurnBringsTheSpiralOneSpacingOut() {
    assertEquals(
        List.of(1.25, 2.0, 2.75, 3.5, 4.25, 5.0, 5.75, 6.5, 7.25, 8.0, 8.5),
        rings(Briefs.inch()).rings().stream().map(Ring::ringRadius).toList());
  }

  /** 0.1 + 0.2 kinds: 2.1 ÷ 0.7 is 3.0000000000000004 in binary, and three turns all the same. */
  @Test
  void aWholeNumberOfTurnsBeginsNoFurtherOne() {
    assertEquals(3, rings(toTheEdge(4.2, .7, 0)).ringCount());
    assertEquals(3, rings(toTheEdge(4.2, .7, 0).with("row_style", "rings")).ringCount());
  }

  /**
   * From 1/2 to 8 1/2 in the spiral is 301.7616 long (computed from the exact spiral); a circle of
   * 8 1/2 is 53.4071. The area rule, π(8.5² − 0.5²)/0.75 = 301.5929, takes the circle on too.
   */
  @Test
  void aClosingRingGoesOnceRoundTheOuterRadius() {
    Rings rings = rings(Briefs.inch().with("closing_ring", "yes"));
    Ring closing = rings.rings().get(11);
    assertEquals(12, rings.ringCount());
    assertEquals(8.5, closing.ringRadius());
    assertEquals(53.4071, closing.ringLength(), 5e-5);
    assertEquals(355.1687, rings.stitchedLength(), 1e-4);
    assertEquals(rings.stitchedLength(), closing.runningStitched(), 1e-9);
    assertEquals(355.0000, rings.areaRuleLength(), 1e-4);
  }

  @Test
  void separateRingsAreClosedAlready() {
    Briefs separate = Briefs.inch().with("row_style", "rings");
    assertEquals(rings(separate), rings(separate.with("closing_ring", "yes")));
  }

  /** By hand: 8 in by three quarters. Circles from 1/2 to 8 in are eleven. */
  @ParameterizedTest
  @CsvSource({"spiral,10.666667", "rings,11"})
  void aTurnMayBeAPartOfOne(String style, double turns) {
    assertEquals(turns, rings(Briefs.inch().with("row_style", style)).turnCount(), 5e-7);
  }

  /** Against commons-math3's integral between the angles of both radii. */
  @Test
  void everyRingOfASpiralEndsWhereIntegrationSays() {
    double perInch = TURN / .75;
    for (Ring ring : rings(Briefs.inch()).rings()) {
      double expected = SpiralTest.integrated(.75, perInch * .5, perInch * ring.ringRadius());
      assertEquals(expected, ring.runningStitched(), 1e-9 * expected, ring::toString);
    }
  }

  @ParameterizedTest
  @CsvSource({"spiral", "rings"})
  void theRingsAddUpToTheStitchedLength(String style) {
    Rings rings = rings(Briefs.inch().with("row_style", style));
    double sum = rings.rings().stream().mapToDouble(Ring::ringLength).sum();
    assertEquals(rings.stitchedLength(), sum, 1e-10);
    assertEquals(rings.ringCount(), rings.rings().size());
  }

  /** By hand: half the end allowance of 1 in comes before the first stitch, fullness is 2 1/2. */
  @Test
  void marksOnTheStripAllowForTheTuckedInEnd() {
    Ring first = rings(Briefs.inch().with("row_style", "rings")).rings().get(0);
    assertEquals(.5 + 2.5 * (TURN * .5 + .5), first.runningFlat(), 1e-12);
  }

  /** R 12, r 4, t 1: 402 cm; The Math Forum, Dr. Math 56471 (1997). */
  @Test
  void theAreaRuleMeasuresARoll() {
    assertEquals(402, rings(toTheEdge(24, 1, 4)).areaRuleLength(), .5);
  }

  /** Mean circle of 12 in to 4 in, 600 turns: 15079.64474; Mathematics Stack Exchange Q3043209. */
  @Test
  void theAreaRuleIsTheMeanCircleTimesTheTurns() {
    assertEquals(15079.64474, rings(toTheEdge(12, 4.0 / 600, 2)).areaRuleLength(), 5e-6);
  }

  /** Computed from the exact definition: the rule falls short by the little it neglects. */
  @ParameterizedTest
  @CsvSource({"40,2,628.318531,629.167406", "16,1,201.061930,201.468612"})
  void theAreaRuleComesCloseToTheSpiral(
      double diameter, double spacing, double rule, double spiral) {
    Rings rings = rings(toTheEdge(diameter, spacing, 0));
    assertEquals(rule, rings.areaRuleLength(), 5e-7);
    assertEquals(spiral, rings.stitchedLength(), 5e-7);
  }
}
