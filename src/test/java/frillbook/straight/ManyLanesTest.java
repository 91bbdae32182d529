package frillbook.straight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Strips 1 wide past a disc of 40 that lies with one side at the near edge, across fabric 100 wide;
 * seams of 1. There is room for forty beside it, and thirty-two are looked at.
 */
class ManyLanesTest {
  private static final StraightCutting CUTTING =
      StraightCutting.of(
          Grain.CROSSWISE,
          new Fabric(100, 1, 1),
          new Pieces(1, 4000, 0, 12, 1, 40, .125),
          new Join(false, 1, 1));

  private static final StraightTrial TRIAL = CUTTING.attempt(60, 0);

  /** The n-th strip from the rim, from n − 1 to n, past the centre at 20: Pythagoras. */
  private static double strip(int number) {
    double offset = Math.max(0, Math.max(20 - number, number - 1 - 20));
    return 100 - 20 - Math.sqrt(400 - offset * offset);
  }

  private static double strips(int count) {
    return IntStream.rangeClosed(1, count).mapToDouble(ManyLanesTest::strip).sum();
  }

  @Test
  void stripsBesideADiscAreLookedAtUpToTheThirtySecond() {
    assertEquals(20, TRIAL.abreast().full());
    assertEquals(40, TRIAL.abreast().laneCount());
    assertEquals(strips(32) - 32, TRIAL.abreast().besideLast(), 1e-6);
  }

  /** The last strip may have more room than others, but here it is the fortieth. */
  @Test
  void theLastOfMoreIsNotLookedAt() {
    assertEquals(0, TRIAL.abreast().lastRoom());
  }

  /** What is cut is what the search counted on. */
  @Test
  void thirtyTwoAreCut() {
    double cut = CUTTING.strips(TRIAL).stream().mapToDouble(LaneStrip::piece).sum();
    assertEquals(32, CUTTING.strips(TRIAL).size());
    assertEquals(strips(32), cut, 1e-6);
  }

  /** Strips 1 1/4 wide: 48 lie in 60, sixteen before the disc and 32 beside it. */
  @Test
  void withThirtyTwoAllAreLookedAt() {
    StraightCutting narrow =
        StraightCutting.of(
            Grain.CROSSWISE,
            new Fabric(100, 1, 1),
            new Pieces(1.25, 4000, 0, 12, 1, 40, .125),
            new Join(false, 1, 1));
    StraightTrial trial = narrow.attempt(60, 0);
    assertEquals(32, trial.abreast().laneCount());
    long cut = narrow.strips(trial).stream().filter(lane -> lane.piece() > 0).count();
    assertEquals(32, cut);
  }
}
