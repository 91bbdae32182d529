package frillbook.strip;

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
    "CROSSWISE,SQUARE,1.25",
    "CROSSWISE,BY_GRAIN,1.25",
    "LENGTHWISE,BY_GRAIN,1.25",
    "CROSSWISE,DIAGONAL,4.0177669530",
    "LENGTHWISE,DIAGONAL,4.0177669530",
    "BIAS,SQUARE,1.25",
    "BIAS,BY_GRAIN,1.7677669530",
    "BIAS,DIAGONAL,1.7677669530"
  })
  void theLossFollowsGrainAndLine(Grain grain, JoinLine line, double loss) {
    assertEquals(loss, join(grain, line).loss(), 1e-10);
  }

  /** 50 × 1.06 − 1.25 = 51.75 on the bias, 48.75 on straight grain. */
  @Test
  void onlyBiasStripsLengthenInHandling() {
    assertEquals(51.75, join(Grain.BIAS, JoinLine.SQUARE).net(50), 1e-12);
    assertEquals(48.75, join(Grain.CROSSWISE, JoinLine.SQUARE).net(50), 1e-12);
  }

  /** Twice 4.017767 is more than 6 and less than 12. */
  @Test
  void aStripIsWorthJoiningIfHalfOfItIsLeft() {
    Join mitred = join(Grain.CROSSWISE, JoinLine.DIAGONAL);
    assertEquals(8.035533906, mitred.shortestUseful(6), 1e-9);
    assertEquals(12, mitred.shortestUseful(12));
  }
}
