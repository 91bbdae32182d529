package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.brief.Grain;
import frillbook.brief.JoinLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips 2 1/4 wide with French seams of 1/4 and 3/8, which take 1 1/4; worked by hand. */
class JoinTest {
  private static Join join(Grain grain, JoinLine line) {
    return Join.of(grain, line, 1.25, 2.25, .06);
  }

  /** √2 × 1 1/4 = 1.767767 along the grain of bias; with the mitre of 2 1/4, 4.017767. */
  @ParameterizedTest
  @CsvSource({
    "ACROSS,SQUARE,1.25",
    "ACROSS,BY_GRAIN,1.25",
    "ALONG,BY_GRAIN,1.25",
    "ACROSS,DIAGONAL,4.0177669530",
    "ALONG,DIAGONAL,4.0177669530",
    "BIAS,SQUARE,1.25",
    "BIAS,BY_GRAIN,1.7677669530",
    "BIAS,DIAGONAL,1.7677669530"
  })
  void theTakeupFollowsGrainAndLine(Grain grain, JoinLine line, double takeup) {
    assertEquals(takeup, join(grain, line).takeup(), 1e-10);
  }

  /** 50 × 1.06 − 1.25 = 51.75 on the bias, 48.75 on straight grain. */
  @Test
  void onlyBiasStripsLengthenInHandling() {
    assertEquals(51.75, join(Grain.BIAS, JoinLine.SQUARE).net(50), 1e-12);
    assertEquals(48.75, join(Grain.ACROSS, JoinLine.SQUARE).net(50), 1e-12);
  }

  /** Twice 4.017767 is more than 6 and less than 12. */
  @Test
  void aStripIsWorthJoiningIfHalfOfItIsLeft() {
    Join mitred = join(Grain.ACROSS, JoinLine.DIAGONAL);
    assertEquals(8.035533906, mitred.shortestUseful(6), 1e-9);
    assertEquals(12, mitred.shortestUseful(12));
  }

  /** 200 − 1.25 for a run without spares; two spares of 53 add 2 × 51.75. */
  @Test
  void theRunNeedsOneSeamLessThanItHasStrips() {
    Join square = join(Grain.ACROSS, JoinLine.SQUARE);
    assertEquals(198.75, square.netNeeded(pieces(200, 0), 53), 1e-12);
    assertEquals(302.25, square.netNeeded(pieces(200, 2), 53), 1e-12);
  }

  @Test
  void theShortestRunStillNeedsAStrip() {
    assertEquals(.125, join(Grain.ACROSS, JoinLine.SQUARE).netNeeded(pieces(1, 0), 53));
  }

  /** A strip of 1 in is lost in its own seam; it must not make three spares lessen the need. */
  @Test
  void stripsTooShortToJoinDoNotLessenTheNeed() {
    assertEquals(28.75, join(Grain.ACROSS, JoinLine.SQUARE).netNeeded(pieces(30, 3), 1), 1e-12);
  }

  private static Pieces pieces(double run, int spares) {
    return new Pieces(2.25, run, spares, 12, 0, 13, .125);
  }
}
