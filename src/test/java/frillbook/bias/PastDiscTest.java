package frillbook.bias;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bias strips √2 wide, whose cut lines lie 2 apart along the edge, past discs of 10 (2 − √2) =
 * 5.857864 along the long edge of a fabric 10 wide; worked by hand.
 *
 * <p>The radius is 2.928932. The line through a disc's centre and the one at its rim lie √2 times
 * that apart along the edge, 4.142136, whose square is 17.157288. A point of the rim w past the
 * centre's line, towards the far corner, lies r − w/2 ± √(17.157288 − w²)/2 from the edge.
 */
class PastDiscTest {
  private static final double ROOT2 = Math.sqrt(2);

  private static final double DISC = 10 * (2 - ROOT2);

  private static BiasCutting cutting(int discs, boolean slanting, double stripWidth) {
    Pieces pieces = new Pieces(stripWidth, 60.5, 0, 2 * ROOT2, discs, DISC, .125);
    return BiasCutting.of(new Fabric(10, 1, 5), pieces, new Join(slanting, .5, 1));
  }

  private static List<PastDisc> past(int discs, boolean slanting) {
    return cutting(discs, slanting, ROOT2).past();
  }

  /**
   * The first strip, from 4.142136 to 2.142136 before the centre, meets the rim where that runs
   * along the edge, r before the centre: a whole disc is taken. The others lie past that place, and
   * are held up where they begin: at w = −2.142136, −0.142136, 1.857864 and 3.857864.
   */
  @ParameterizedTest
  @CsvSource({"1, 5.857864", "2, 5.772607", "3, 5.069848", "4, 3.851056", "5, 1.754018"})
  void aSlantingEndLiesBelowTheRimAllTheWay(int number, double takes) {
    assertEquals(takes, past(1, true).get(number - 1).pastTakes(), 1e-6);
  }

  /**
   * The second disc's centre is a diameter further, so that the third strip lies from 6 to 4 before
   * it: r + 2 + √(17.157288 − 16)/2 = 5.466819, more than the first disc takes. The fourth, from 4
   * to 2 before it, meets the whole disc; the eighth begins 4 past it: 5.466819 − 4.
   */
  @ParameterizedTest
  @CsvSource({"2, 5.772607, 0", "3, 5.466819, 1", "4, 5.857864, 1", "8, 1.466819, 1"})
  void theDiscThatTakesMoreCounts(int number, double takes, int lastDisc) {
    PastDisc strip = past(2, true).get(number - 1);
    assertEquals(takes, strip.pastTakes(), 1e-6);
    assertEquals(lastDisc, strip.pastDisc());
  }

  /**
   * The end of a square strip comes closest in the middle of the rim, or as near to it as the strip
   * does: the first at w = −2.142136, the third at 0. The half chord is counted from where the
   * inner line, 4.142136 and 0.142136 before the centre, passes it.
   */
  @ParameterizedTest
  @CsvSource({"1, 6.772607", "3, 5.071068"})
  void aSquareEndIsHeldUpByTheMiddleOfTheRim(int number, double takes) {
    assertEquals(takes, past(1, false).get(number - 1).pastTakes(), 1e-6);
  }

  /** (1.414214 × 5.857864) ÷ 2 = 4.14, with another disc 7.07, with two more 10. */
  @ParameterizedTest
  @CsvSource({"0, 0", "1, 5", "2, 8", "3, 10"})
  void theLineIsPassedByAsManyStripsAsItIsLong(int discs, int strips) {
    BiasSetting setting = cutting(discs, true, ROOT2).setting();
    assertEquals(discs, setting.lineCount());
    assertEquals(strips, setting.lineRows());
    assertEquals(0, setting.lineBand());
  }

  /**
   * 32 strips of 2 are passed by 64 ÷ 5.857864 − 1.414214 + 1 = 10.5 discs; two more take a band.
   */
  @Test
  void noMoreDiscsLieInALineThanStripsAreConsidered() {
    BiasSetting setting = cutting(12, true, ROOT2).setting();
    assertEquals(10, setting.lineCount());
    assertEquals(31, setting.lineRows());
    assertEquals(2 * DISC, setting.lineBand(), 1e-9);
  }

  /** 5.857864 × (2 − √2) = 3.431458 is 2.426407 × √2. */
  @ParameterizedTest
  @CsvSource({"2.4264, 1", "2.42641, 0"})
  void stripsTooWideToPassTwoDiscsAtATimeHaveNoLine(double stripWidth, int discs) {
    assertEquals(discs, cutting(1, true, stripWidth).setting().lineCount());
  }

  /**
   * 10 − 3.851056 = 6.148944; where the strip's outer line, at 8, ends 3 past the far corner, 3
   * less.
   */
  @Test
  void aStripIsAsLongAsTheDiscsAndTheFarEdgeLeave() {
    PastDisc fourth = past(1, true).get(3);
    assertEquals(6.148944, fourth.crosswise(10, 14), 1e-6);
    assertEquals(3.148944, fourth.crosswise(10, 5), 1e-6);
  }
}
