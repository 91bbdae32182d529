package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.rows.SpokeRow.SpokeMark;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Turns 3/4 in apart from 1/2 to 8 1/2 in; a base that is drawn in by 4 % is marked ÷ 0.96. */
class MarkedLineTest {
  private static final Briefs UNDRAWN = Briefs.inch().with("draw_in", 0);

  private static MarkedLine line(Briefs briefs) {
    Brief brief = briefs.brief();
    RowSizes sizes = RowSizes.of(brief.cushion());
    return MarkedLine.of(brief, sizes, Rings.of(brief, sizes).turnCount());
  }

  private static List<Double> marks(SpokeRow row) {
    return row.spokes().stream()
        .map(SpokeMark::mark)
        .filter(OptionalDouble::isPresent)
        .map(OptionalDouble::getAsDouble)
        .toList();
  }

  /** By hand: 8.5, 0.5 and 0.75 ÷ 0.96; less 4 % of themselves they are as planned. */
  @Test
  void theLineIsMarkedLargerByWhatTheBaseIsDrawnIn() {
    MarkedLine line = line(Briefs.inch());
    assertEquals(8.854167, line.markedOuterRadius(), 5e-7);
    assertEquals(.520833, line.markedFirstRadius(), 5e-7);
    assertEquals(.78125, line.markedSpacing(), 1e-9);
    assertEquals(8.5, line.markedOuterRadius() * .96, 1e-9);
  }

  /** By hand: 3/4 ÷ 0.96 = 25/32 is 12 1/2 sixteenths, which LibreOffice would show as 12. */
  @Test
  void halfASixteenthIsAHairMore() {
    assertTrue(line(Briefs.inch()).markedSpacing() * 16 > 12.5);
  }

  /** By hand: the circle of 1 1/4 in at the first turn's end is marked at 1.302083. */
  @Test
  void everyRingIsMarkedAsMuchLarger() {
    Brief brief = Briefs.inch().brief();
    List<Ring> rings = Rings.of(brief, RowSizes.of(brief.cushion())).rings();
    assertEquals(1.302083, rings.get(0).markedRadius(), 5e-7);
    assertEquals(8.854167, rings.get(10).markedRadius(), 5e-7);
  }

  /** One turn winds up one spacing: π × 0.248680 = 0.78125. */
  @Test
  void aTurnRoundThePegTakesOneSpacing() {
    assertEquals(.248680, line(Briefs.inch()).pegDiameter(), 5e-7);
  }

  /**
   * A string of length s that winds up on a peg of diameter d draws an involute s²/d long.
   * Published for a circle of circumference .75, out to 8.5: 302.580409 (π(R² − ρ²)/b; Darling,
   * Encyclopedia of Science, for the spacing).
   */
  @Test
  void theStringDrawsTheInvoluteThatEndsAtTheOuterRadius() {
    MarkedLine line = line(UNDRAWN);
    double string = line.stringLength();
    assertEquals(302.580409, string * string / line.pegDiameter(), 5e-7);
  }

  /** (πb/4)n(n + 1) of 24 half circles, b .75, the first of them b/2: 353.429174. */
  @Test
  void halfCirclesFromAQuarterOfASpacingAreTheTwoCentreSpiral() {
    MarkedLine line = line(UNDRAWN.with("centre_gap", .1875));
    double length = 0;
    for (int half = 0; half < 24; half++) {
      length += Math.PI * (line.compassRadius() + half * line.compassStep());
    }
    assertEquals(353.429174, length, 5e-7);
  }

  /**
   * Drawn on the centres by turns; from the middle the spiral is b/2 farther at every half turn.
   */
  @Test
  void halfCirclesCrossTheSpiralAtEveryHalfTurn() {
    MarkedLine line = line(Briefs.inch());
    double centre = line.compassStep() / 2;
    double end = centre - line.compassRadius();
    for (int half = 0; half <= 21; half++) {
      double planned = (.5 + .75 * half / 2) / .96;
      assertEquals(planned, Math.abs(end), 1e-9, "half circle " + half);
      end = 2 * centre - end;
      centre = -centre;
    }
  }

  /**
   * By hand: .520833 + .78125 × (n − 1 + j/8), to the nearest sixteenth. First turn .618490,
   * .716146, .813802, .911458, 1.009115, 1.106771, 1.204427, 1.302083; spoke 5 of the eleventh turn
   * 8.821615, spoke 6 beyond the end at 8.854167.
   */
  @Test
  void spokesAreMarkedToTheNearestSixteenth() {
    List<SpokeRow> spokes = line(Briefs.inch()).spokes();
    assertEquals(11, spokes.size());
    assertEquals(
        List.of(.625, .6875, .8125, .9375, 1.0, 1.125, 1.1875, 1.3125), marks(spokes.get(0)));
    assertEquals(5, marks(spokes.get(10)).size());
    assertEquals(8.8125, marks(spokes.get(10)).get(4));
  }

  /** By hand: 1.27 + 1.905 cm × 1/8 is 1.508125, × 1/4 is 1.74625, undrawn. */
  @Test
  void inCentimetresTheyAreMarkedToTheMillimetre() {
    List<Double> first =
        marks(
            line(UNDRAWN.inMillimetres().with("centre_gap", 1.27).with("ring_spacing", 1.905))
                .spokes()
                .get(0));
    assertEquals(List.of(1.5, 1.7), first.subList(0, 2));
  }

  /** 8 in by halves are sixteen turns; the page has room for fourteen. */
  @ParameterizedTest
  @CsvSource({"spokes,spiral,14", "string,spiral,0", "compass,spiral,0", "spokes,rings,0"})
  void onlyASpiralOnSpokesNeedsThem(String method, String style, int rows) {
    Briefs close = Briefs.inch().with("ring_spacing", .5);
    MarkedLine line = line(close.with("marking_method", method).with("row_style", style));
    assertEquals(rows, line.spokes().size());
  }
}
