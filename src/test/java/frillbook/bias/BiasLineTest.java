package frillbook.bias;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Strips and discs of {@link PastDiscTest} on fabric 10 wide, seams of 1/2, a need of 60; worked by
 * hand. The line that touches the first disc meets the edge at 10 − 4.142136 = 5.857864.
 */
class BiasLineTest {
  private static final double ROOT2 = Math.sqrt(2);

  private static final double DISC = 10 * (2 - ROOT2);

  private static BiasCutting cutting(int discs, boolean slanting) {
    Pieces pieces = new Pieces(ROOT2, 60.5, 0, 2 * ROOT2, discs, DISC, .125);
    return BiasCutting.of(new Fabric(10, 1, 5), pieces, new Join(slanting, .5, 1));
  }

  private static BiasComb line(double length) {
    return BiasComb.ofLine(cutting(1, true), length);
  }

  /**
   * 20 long: one strip at 3.857864 before that line, five past the disc, then from 15.857864 on
   * there is room for six: 30 − 2 − 15.857864 = 12.142136, two of them full. The last four begin at
   * 2.142136 from the far corner.
   */
  @Test
  void fullStripsFollowThosePastTheDiscs() {
    BiasComb comb = line(20);
    assertEquals(3.857864, comb.near(), 1e-6);
    assertEquals(1, comb.nearShort());
    assertEquals(12, comb.laneCount());
    assertEquals(2.142136, comb.far(), 1e-6);
    assertEquals(4, comb.farShort());
    assertEquals(1, comb.pairs());
  }

  /**
   * Along the edge 3.857864 near, 4 × 2.142136 + 2 × 6 = 20.568542 far, 20 full and 2 for the pair
   * are 46.426406. Past the disc lie 4.142136, 4.227393, 4.930152, 6.148944 and 8.245982, in all
   * 27.694607. So √2 × 74.121013 less twelve seams.
   */
  @Test
  void stripsPastTheDiscsAddWhatTheyAreLong() {
    assertEquals(46.426406, line(20).edge(), 1e-6);
    PastPieces past = line(20).pastPieces(cutting(1, true));
    assertEquals(14.142136, line(20).room(cutting(1, true).setting()), 1e-6);
    assertEquals(ROOT2 * 27.694607 - 5 * .5, past.whole(), 2e-6);
    assertEquals(0, past.shortened());
    assertEquals(ROOT2 * 74.121013 - 12 * .5 - 60, line(20).over(), 3e-6);
  }

  /**
   * 12 long: the far corner's line is 12 − 10 + 4.142136 = 6.142136 on. So the fourth and the fifth
   * strip, whose outer lines lie at 8 and 10, are 1.857864 and 3.857864 shorter: 4.291080 and
   * 4.388118.
   */
  @Test
  void stripsThatBeginAtTheFarEdgeAreShorter() {
    PastPieces past = line(12).pastPieces(cutting(1, true));
    assertEquals(ROOT2 * (4.142136 + 4.227393 + 4.930152) - 3 * .5, past.whole(), 2e-6);
    assertEquals(ROOT2 * (4.291080 + 4.388118) - 2 * .5, past.shortened(), 2e-6);
  }

  /** Two discs take 11.715729. */
  @ParameterizedTest
  @CsvSource({"11.7157, false", "11.71573, true"})
  void theLineMustFitOnTheLongEdge(double length, boolean fits) {
    assertEquals(fits, BiasComb.ofLine(cutting(2, true), length).fits());
  }

  @Test
  void withoutDiscsThereIsNoLine() {
    assertFalse(BiasComb.ofLine(cutting(0, true), 20).fits());
    assertEquals(-60, BiasComb.ofLine(cutting(0, true), 20).over());
  }

  /** Square ends never make a pair. */
  @Test
  void squareEndsGoPastTheDiscsToo() {
    BiasComb comb = BiasComb.ofLine(cutting(1, false), 20);
    assertTrue(comb.fits());
    assertEquals(0, comb.pairs());
  }

  /**
   * 25 long, a disc in the near corner, whose line is at 10: no strip of that corner is shorter, so
   * there is no pair. On a fabric 20 wide the first strips lie at 10, 12, 14, 16 and 18, and five
   * of the nine of the far corner, at 2 to 18 or a little further, are paired with them: the
   * longest.
   */
  @Test
  void besideOneCornerDiscTheLongestOfTheOtherCornerArePaired() {
    Pieces pieces = new Pieces(ROOT2, 1000, 0, 2 * ROOT2, 1, DISC, .125);
    BiasCutting wide = BiasCutting.of(new Fabric(20, 1, 5), pieces, new Join(true, .5, 1));
    BiasTrial trial = wide.attempt(6, 5);
    assertTrue(trial.usesCorners());
    PairedStrips pairs = PairedStrips.of(trial, wide.setting(), 2);
    assertEquals(5, pairs.count());
    assertEquals(0, pairs.nearBefore());
    assertEquals(4, pairs.farBefore());
    assertEquals(ROOT2, pairs.longer(), 1e-9);
    List<CornerStrips> rows = wide.cornerStrips(trial);
    assertEquals(11 * ROOT2, rows.get(0).nearPair(), 1e-9);
    assertEquals(8 * ROOT2, rows.get(3).farLane(), 1e-9);
    assertEquals(11 * ROOT2, rows.get(4).farPair(), 1e-9);
  }
}
