package frillbook.bias;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bias strips √2 wide, whose cut lines lie 2 apart along the edge, on fabric 10 wide; none shorter
 * than 2√2, so that a bare corner begins at 2; seams of 1/2, a need of 60. Discs of 10 (2 − √2) in
 * a corner reach to 10. Worked by hand; strips are counted along the edge, where those that end on
 * both long sides measure 10.
 */
class BiasCombTest {
  private static final double ROOT2 = Math.sqrt(2);

  private static final double DISC = 10 * (2 - ROOT2);

  private static final BiasCutting TEN = cutting(10, ROOT2, true);

  private static BiasCutting cutting(double width, double stripWidth, boolean diagonal) {
    Pieces pieces = new Pieces(stripWidth, 60.5, 0, 2 * ROOT2, 2, DISC, .125);
    Join join = new Join(diagonal, .5, 1);
    return BiasCutting.of(new Fabric(width, 1, 5), pieces, join);
  }

  private static BiasComb comb(double width, double length, int discs) {
    return BiasComb.of(cutting(width, ROOT2, true), length, discs);
  }

  /** Net length of the pieces beside one disc, in the near corner. */
  private static double beside(double width, double length) {
    return comb(width, length, 1).nearPieces(cutting(width, ROOT2, true), 1).both();
  }

  private static double joined(double edge, int strips) {
    return ROOT2 * edge - strips * .5;
  }

  /**
   * 20 long: from 2 to 28 there is room for thirteen strips. 2, 4, 6 and 8 in either corner and
   * five of 10 between are 90 along the edge. Both corners' strips go together in four pairs, each
   * longer by 2 than its shorter sides: 98.
   */
  @Test
  void stripsGrowThroughOneCornerAndShrinkThroughTheOther() {
    BiasComb comb = comb(10, 20, 0);
    assertEquals(20, comb.longer());
    assertEquals(10, comb.shorter());
    assertEquals(10, comb.waist());
    assertEquals(2, comb.near(), 1e-9);
    assertEquals(2, comb.far(), 1e-9);
    assertEquals(13, comb.laneCount());
    assertEquals(4, comb.nearShort());
    assertEquals(4, comb.farShort());
    assertEquals(4, comb.pairs());
    assertEquals(98, comb.edge(), 1e-9);
    assertEquals(10 * ROOT2 - .5, comb.fullNet(), 1e-9);
    assertEquals(joined(98, 13) - 60, comb.over(), 1e-8);
  }

  /**
   * 4 long and 10 wide: 2, three of 4 and 2 are the same strips as on 10 long and 4 wide, and one
   * pair.
   */
  @Test
  void aFabricWiderThanLongIsSeenFromItsSide() {
    BiasComb comb = comb(10, 4, 0);
    assertEquals(10, comb.longer());
    assertEquals(4, comb.shorter());
    assertEquals(5, comb.laneCount());
    assertEquals(18, comb.edge(), 1e-9);
    assertEquals(comb(4, 10, 0), comb);
  }

  /**
   * 9 by 9: from 2 to 16 seven strips, 2, 4, 6, 7, 6, 4 and 2. The middle one would be 8, but both
   * corners shorten it. The other six are three pairs, 31 + 3 × 2.
   */
  @Test
  void onASquareTheMiddleStripIsShortenedByBothCorners() {
    BiasComb comb = comb(9, 9, 0);
    assertEquals(7, comb.laneCount());
    assertEquals(4, comb.nearShort());
    assertEquals(4, comb.farShort());
    assertEquals(3, comb.pairs());
    assertEquals(37, comb.edge(), 1e-9);
    assertEquals(7 * ROOT2, comb.strip(8, 2), 1e-9);
  }

  /** 20 long, square ends take √2 of a full strip of 10√2: 2, 4, 6, 8 and then 9. */
  @Test
  void squareEndsShortenFullStripsByTheirWidth() {
    BiasComb comb = BiasComb.of(cutting(10, ROOT2, false), 20, 0);
    assertEquals(9, comb.waist(), 1e-9);
    assertEquals(9 * ROOT2, comb.fullStrip(), 1e-9);
    assertEquals(0, comb.pairs());
    assertEquals(85, comb.edge(), 1e-9);
  }

  /**
   * 20 long: 6√2 at 6, 10√2 at 10 and at 12, and 6√2 again at 22, 30 − 22 − 2 from the far corner.
   */
  @Test
  void aStripIsAsLongAsItsPlaceAllows() {
    BiasComb comb = comb(10, 20, 0);
    assertEquals(6 * ROOT2, comb.strip(6, 2), 1e-9);
    assertEquals(10 * ROOT2, comb.strip(10, 2), 1e-9);
    assertEquals(10 * ROOT2, comb.strip(12, 2), 1e-9);
    assertEquals(6 * ROOT2, comb.strip(22, 2), 1e-9);
  }

  /**
   * 20 long with a disc: from 10 to 28 nine strips, five of 10 and then 8, 6, 4 and 2. Beside the
   * disc one strip gives 3.150009 and 3.029437; those nearer the corner are under 2√2.
   */
  @Test
  void aDiscTakesTheNearCorner() {
    BiasComb comb = comb(10, 20, 1);
    assertEquals(10, comb.near(), 1e-9);
    assertEquals(9, comb.laneCount());
    assertEquals(0, comb.nearShort());
    assertEquals(4, comb.farShort());
    assertEquals(70, comb.edge(), 1e-9);
    assertEquals(0, comb.nearSlack(TEN, 1), 1e-9);
    assertEquals(3.150009 + 3.029437 - 1, comb.nearPieces(TEN, 1).both(), 2e-6);
    assertEquals(0, comb.farPieces(TEN, 1).both());
    assertEquals(joined(70, 9) + 5.179446 - 60, comb.over(), 3e-6);
  }

  /**
   * 25 long with two discs: from 10 to 25 there is room for seven strips of 10, and 1 is left. The
   * far disc is pushed out by it; its strip would begin at 11, past the fabric's 10.
   */
  @Test
  void whatIsLeftPushesTheFarDiscOut() {
    BiasComb comb = comb(10, 25, 2);
    assertEquals(7, comb.laneCount());
    assertEquals(11, comb.far(), 1e-9);
    assertEquals(1, comb.farSlack(TEN, 2), 1e-9);
    assertEquals(0, comb.farShort());
    assertEquals(5.179446, comb.nearPieces(TEN, 2).both(), 2e-6);
    assertEquals(0, comb.farPieces(TEN, 2).both());
    assertEquals(joined(70, 7) + 5.179446 - 60, comb.over(), 3e-6);
  }

  /** 20 long: five strips of 10, both discs in their corners, pieces beside both. */
  @Test
  void bothDiscsHaveStripsBesideThem() {
    BiasComb comb = comb(10, 20, 2);
    assertEquals(0, comb.farSlack(TEN, 2), 1e-9);
    assertEquals(comb.nearPieces(TEN, 2).both(), comb.farPieces(TEN, 2).both(), 1e-6);
    assertEquals(joined(50, 5) + 2 * 5.179446 - 60, comb.over(), 5e-6);
  }

  /** 8 by 7: both discs reach to 10 of 15, 5 too far. */
  @Test
  void discsThatMeetDoNotFit() {
    BiasComb comb = comb(7, 8, 2);
    assertEquals(0, comb.laneCount());
    assertEquals(-5, comb.farSlack(TEN, 2), 1e-9);
    assertEquals(-60, comb.over());
  }

  /**
   * On fabric 6 wide a disc of 5.858 has 0.142 to spare, and pushed out by 1 along both edges it
   * moves 1/2 along each. 30 long leaves no rest after eight strips, 31 long leaves 1; 0.284271 is
   * just twice what is to spare, and a hair more is allowed.
   */
  @ParameterizedTest
  @CsvSource({
    "30,true",
    "30.2,true",
    "30.284271247,true",
    "30.284272,true",
    "30.28428,false",
    "31,false"
  })
  void aDiscPushedOffTheFabricDoesNotFit(double length, boolean fits) {
    BiasComb comb = comb(6, length, 2);
    assertEquals(8, comb.laneCount());
    assertEquals(fits, comb.over() > -60, () -> "over " + comb.over());
  }

  /** A fabric 2 wide gives full strips of 2√2, just worth cutting: from 2 to 20 nine of them. */
  @Test
  void fullStripsMustBeWorthCutting() {
    assertEquals(joined(18, 9) - 60, comb(2, 20, 0).over(), 1e-8);
    assertEquals(-60, comb(1.99, 20, 0).over());
    assertTrue(comb(1.9999998, 20, 0).over() > -60);
  }

  /**
   * 60 by 60: cut lines 2 apart would make 29 short strips from a bare corner at 2; the innermost
   * 24 begin at 60 − 48 = 12, and a corner disc moves out by 2 to reach there too.
   */
  @Test
  void moreThanTwentyFourShortStripsAreNotCut() {
    BiasComb bare = comb(60, 60, 0);
    assertEquals(12, bare.near(), 1e-9);
    assertEquals(12, bare.far(), 1e-9);
    assertEquals(24, bare.nearShort());
    assertEquals(48, bare.laneCount());
    BiasComb discs = comb(60, 60, 2);
    assertEquals(2, discs.nearSlack(TEN, 2), 1e-9);
    assertEquals(2, discs.farSlack(TEN, 2), 1e-9);
  }

  /**
   * 60 by 60 with a disc pushed out by 2: √2 is added to each of the pieces of 3.150009 and
   * 3.029437. Those of the next strip, 1.315434 and 0.321582, stay under 2√2 even so.
   */
  @Test
  void aDiscPushedOutHasLongerStripsBesideIt() {
    assertEquals(3.150009 + 3.029437 + 2 * ROOT2 - 1, beside(60, 60), 3e-6);
  }

  /** Each strip is joined 1.06 times as long as it is cut. */
  @Test
  void stripsThatStretchAddMore() {
    Pieces pieces = new Pieces(ROOT2, 60.5, 0, 2 * ROOT2, 2, DISC, .125);
    Join join = new Join(true, .5, 1.06);
    BiasCutting stretching = BiasCutting.of(new Fabric(10, 1, 5), pieces, join);
    assertEquals(1.499066, stretching.setting().edgeGain(), 1e-6);
    double expected = 1.06 * ROOT2 * 98 - 13 * .5 - 60;
    assertEquals(expected, BiasComb.of(stretching, 20, 0).over(), 1e-8);
  }

  /** 21 long: the far corner begins at 3, 5, 7 and 9, of which the last reaches a long edge. */
  @Test
  void noMoreArePairedThanTheOtherCornerHas() {
    BiasComb comb = comb(10, 21, 0);
    assertEquals(3, comb.far(), 1e-9);
    assertEquals(4, comb.farShort());
    assertEquals(3, comb.pairs());
  }
}
