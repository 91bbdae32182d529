package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.Brief;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often the needle goes round: 8 in from the gap to the outer radius, rows 3/4 in apart. */
class RingsSewnTest {
  private final Rings open = rings(Briefs.inch());

  private final Rings closed = rings(Briefs.inch().with("closing_ring", "yes"));

  private final Rings separate = rings(Briefs.inch().with("row_style", "rings"));

  private static Rings rings(Briefs briefs) {
    Brief brief = briefs.brief();
    return Rings.of(brief, RowSizes.of(brief.cushion()));
  }

  /** By hand: 8 ÷ 3/4 = 10 2/3 turns, one more round the edge; circles of 1/2 to 8 in are 11. */
  @Test
  void aClosingRingIsOneTurnMore() {
    assertEquals(32 / 3.0, open.sewnTurns(), 1e-6);
    assertEquals(35 / 3.0, closed.sewnTurns(), 1e-6);
    assertEquals(11, separate.sewnTurns());
  }

  @ParameterizedTest
  @CsvSource({"0,1", "0.99,1", "1,2", "1.5,2", "10,11", "10.666666666667,11", "11,11"})
  void aWholeNumberOfTurnsBeginsTheNextRing(double turns, int ring) {
    assertEquals(ring, open.ringAfter(turns));
    assertEquals(ring, separate.ringAfter(turns));
  }

  /** The closing ring is the twelfth. */
  @ParameterizedTest
  @CsvSource({"0,1", "10.5,11", "10.666666666667,11", "10.67,12", "11.6,12"})
  void theClosingRingBeginsWhereTheSpiralEnds(double turns, int ring) {
    assertEquals(ring, closed.ringAfter(turns));
  }

  /** By hand: the second circle, of 1 1/4 in, is 7.853982 round, and 1/2 of lap 0.063662 of it. */
  @Test
  void aSeparateRingGoesRoundOnceAndItsLap() {
    assertEquals(1.063662, separate.timesRound(2), 5e-7);
    assertEquals(1, open.timesRound(2));
  }

  /** By hand: 3/4 ÷ 2π, and at the gap it has turned by 1/2 ÷ that, 4.188790 or 2/3 of a turn. */
  @Test
  void theSpiralClimbsOneSpacingInATurn() {
    assertEquals(.119366, open.ringPitch(), 5e-7);
    assertEquals(4.188790, open.startAngle(), 5e-7);
  }
}
