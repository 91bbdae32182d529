package frillbook.bias;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.cutting.SearchReach;
import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bias strips √2 wide on fabric 10 wide sold by 5, none shorter than 2√2, seams of 1, discs of 10
 * (2 − √2) = 5.858; worked by hand. Cut lines lie 2 apart along the edge.
 *
 * <p>25 long with two discs in the corners, each reaching to 10: seven strips of 10√2, and 1 is
 * left over, by which the far disc is pushed out. Beside the near disc lie pieces of 3.150009 and
 * 3.029437. In all that adds 7 (10√2 − 1) + 4.179446 = 96.174395. 20 long: five strips and four
 * pieces, 74.069572.
 */
class BiasCuttingTest {
  private static final double ROOT2 = Math.sqrt(2);

  private static final double DISC = 10 * (2 - ROOT2);

  private static BiasCutting cutting(double run, int discs) {
    return cutting(run, discs, 1, true);
  }

  private static BiasCutting cutting(double run, int discs, double share, boolean diagonal) {
    Pieces pieces = new Pieces(ROOT2, run, 0, 2 * ROOT2, discs, DISC, .125);
    Join join = new Join(diagonal, 1, 1);
    return BiasCutting.of(new Fabric(10, share, 5), pieces, join);
  }

  @Test
  void whereStripsBeginIsTheSameForEveryLength() {
    BiasSetting setting = cutting(94, 1).setting();
    assertEquals(1, setting.cornerCount());
    assertEquals(2, setting.tip(), 1e-9);
    assertEquals(10, setting.discReach(), 1e-9);
    assertEquals(10, setting.nearReach(), 1e-9);
    assertEquals(2, setting.farReach(), 1e-9);
    assertEquals(0, setting.squareEnds());
    assertEquals(1, cutting(94, 1, 1, false).setting().squareEnds(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0,0,2,2", "1,1,10,2", "2,2,10,10", "5,2,10,10"})
  void oneDiscLiesInEitherCornerAtMost(int discs, int corners, double near, double far) {
    BiasSetting setting = cutting(94, discs).setting();
    assertEquals(corners, setting.cornerCount());
    assertEquals(near, setting.nearReach(), 1e-9);
    assertEquals(far, setting.farReach(), 1e-9);
  }

  /** Discs of 4 lie two side by side on 10: five take three bands, three of them two. */
  @Test
  void discsThatAreInNoCornerLieInBands() {
    Pieces pieces = new Pieces(ROOT2, 94, 0, 2 * ROOT2, 5, 4, .125);
    Join join = new Join(true, 1, 1);
    BiasSetting setting = BiasCutting.of(new Fabric(10, 1, 5), pieces, join).setting();
    assertEquals(2, setting.perBand());
    assertEquals(12, setting.endsBand());
    assertEquals(8, setting.cornersBand());
  }

  /** A disc wider than the fabric would lie alone in its band. */
  @Test
  void aBandHoldsAtLeastOneDisc() {
    Pieces pieces = new Pieces(ROOT2, 94, 0, 2 * ROOT2, 2, 11, .125);
    Join join = new Join(true, 1, 1);
    BiasSetting setting = BiasCutting.of(new Fabric(10, 1, 5), pieces, join).setting();
    assertEquals(1, setting.perBand());
    assertEquals(22, setting.endsBand());
  }

  /** For the 93 of a run of 94 with a seam of 1: 96.174395 on 25 in, 74.069572 on 20. */
  @Test
  void fiveStepsAreEnoughAndFourAreNot() {
    BiasTrial five = cutting(94, 2).attempt(5, 4);
    assertEquals(25, five.usable());
    assertTrue(five.usesCorners());
    assertEquals(3.174395, five.better().over(), 3e-6);
    assertTrue(five.enough());
    assertEquals(4, five.kept());
    BiasTrial four = cutting(94, 2).attempt(4, 3);
    assertEquals(74.069572 - 93, four.better().over(), 5e-6);
    assertFalse(four.enough());
    assertEquals(4, four.kept());
  }

  /** With 5 lost at the ends the 25 that are enough are left of 30, and 20 of 25 are not. */
  @Test
  void straighteningTheEndsTakesFromTheLength() {
    Pieces pieces = new Pieces(ROOT2, 94, 0, 2 * ROOT2, 2, DISC, .125);
    Fabric squared = new Fabric(10, 1, 5, 5);
    BiasCutting cutting = BiasCutting.of(squared, pieces, new Join(true, 1, 1));
    assertEquals(25, cutting.attempt(6, 5).usable());
    assertEquals(3.174395, cutting.attempt(6, 5).better().over(), 3e-6);
    assertFalse(cutting.attempt(5, 4).enough());
  }

  /**
   * 20 long and no discs: 2, 4, 6, 8, five of 10, and 8, 6, 4, 2 are 90√2, and 2√2 more for each of
   * four pairs. Less thirteen seams of 1 that is 125.593. A run a hair longer than that and one
   * seam is not enough.
   */
  @Test
  void justEnoughIsEnough() {
    double yield = 98 * ROOT2 - 13;
    assertTrue(cutting(yield + 1, 0).attempt(4, 0).enough());
    assertFalse(cutting(yield + 1.00001, 0).attempt(4, 0).enough());
  }

  /** 6 × 5 × 0.9 = 27; bands of two discs take 11.716 of it, and corners nothing. */
  @Test
  void bandsAreTakenOffWhatWashingLeaves() {
    BiasTrial trial = cutting(94, 2, .9, true).attempt(6, 5);
    assertEquals(27, trial.usable(), 1e-12);
    assertEquals(27 - 2 * DISC, trial.ends().longer(), 1e-9);
    assertEquals(27, trial.corners().longer(), 1e-9);
  }

  /** With three discs, the third takes a band beside the corners too. */
  @Test
  void onlyTwoDiscsFindACorner() {
    BiasTrial trial = cutting(94, 3).attempt(8, 7);
    assertEquals(40 - 3 * DISC, trial.ends().longer(), 1e-9);
    assertEquals(40 - DISC, trial.corners().longer(), 1e-9);
  }

  private static final BesidePieces NOTHING = new BesidePieces(0, 0);

  private static final PastPieces NONE_PAST = new PastPieces(0, 0);

  private static BiasTrial trial(double ends, double corners) {
    return trial(ends, corners, -1);
  }

  private static BiasTrial trial(double ends, double corners, double line) {
    BiasComb lined = comb(line);
    return new BiasTrial(1, 5, comb(ends), comb(corners), lined, NOTHING, NOTHING, NONE_PAST, 0);
  }

  private static BiasComb comb(double over) {
    return new BiasComb(10, 10, 10, 2, 8, 2, 4, 4, 0, 0, 0, 40, 14, 1, 5, true, 0, over);
  }

  @Test
  void cornersAreUsedOnlyForAGain() {
    assertTrue(trial(1, 2).usesCorners());
    assertEquals(2, trial(1, 2).better().over());
    assertFalse(trial(2, 1).usesCorners());
    assertEquals(2, trial(2, 1).better().over());
    assertFalse(trial(2, 2).usesCorners());
    assertFalse(trial(2, 2.0000004).usesCorners());
  }

  @Test
  void aLineIsUsedOnlyWhereNothingPlainerIsEnough() {
    assertTrue(trial(-2, -1, 1).usesLine());
    assertFalse(trial(-2, -1, 1).usesCorners());
    assertEquals(1, trial(-2, -1, 1).better().over());
    assertFalse(trial(-1, 0, 1).usesLine());
    assertTrue(trial(-1, 0, 1).usesCorners());
    assertFalse(trial(0, -1, 1).usesLine());
    assertFalse(trial(-1, -2, -.5).usesLine());
  }

  /** 20 long, no discs: between 2√2, 4√2, 6√2, 8√2 and 10√2 lie means of 3√2, 5√2, 7√2, 9√2. */
  @Test
  void stripsInTheCornersGrowByTwiceTheirWidth() {
    BiasCutting cutting = cutting(94, 0);
    List<CornerStrips> rows = cutting.cornerStrips(cutting.attempt(4, 0));
    assertEquals(32, rows.size());
    for (int number = 1; number <= 5; number++) {
      double length = number <= 4 ? (2 * number + 1) * ROOT2 : 0;
      assertEquals(number, rows.get(number - 1).cornerNo());
      assertEquals(length, rows.get(number - 1).nearPair(), 1e-9);
      assertEquals(length, rows.get(number - 1).farPair(), 1e-9);
      assertEquals(0, rows.get(number - 1).nearLane());
      assertEquals(0, rows.get(number - 1).nearRight());
      assertEquals(0, rows.get(number - 1).farLeft());
    }
  }

  /**
   * On 9 by 9 without discs the middle of seven is offered once only, in the near corner and 7√2
   * long. The others are pairs, and count as 3√2, 5√2 and 7√2.
   */
  @Test
  void aStripOfBothCornersIsOfferedOnce() {
    Pieces pieces = new Pieces(ROOT2, 94, 0, 2 * ROOT2, 0, DISC, .125);
    Join join = new Join(true, 1, 1);
    BiasCutting square = BiasCutting.of(new Fabric(9, 1, 9), pieces, join);
    List<CornerStrips> rows = square.cornerStrips(square.attempt(1, 0));
    assertEquals(7 * ROOT2, rows.get(3).nearLane(), 1e-9);
    assertEquals(7 * ROOT2, rows.get(2).farPair(), 1e-9);
    assertEquals(0, rows.get(3).farLane());
    assertEquals(List.of(7, 7, 7, 5, 5, 3, 3), edges(BiasOdd.sorted(rows, join, ROOT2), 7));
  }

  private static List<Integer> edges(List<BiasOdd> odds, int count) {
    return odds.stream().limit(count).map(o -> (int) Math.round(o.odd() / ROOT2)).toList();
  }

  /** 20 long, both discs in their corners: pieces of 3.150009 and 3.029437 beside each. */
  @Test
  void stripsBesideBothDiscsAreOffered() {
    BiasCutting cutting = cutting(94, 2);
    List<CornerStrips> rows = cutting.cornerStrips(cutting.attempt(4, 0));
    assertEquals(3.150009, rows.get(0).nearRight(), 1e-6);
    assertEquals(3.029437, rows.get(0).nearLeft(), 1e-6);
    assertEquals(3.150009, rows.get(0).farRight(), 1e-6);
    assertEquals(3.029437, rows.get(0).farLeft(), 1e-6);
    assertEquals(0, rows.get(1).nearRight());
    assertEquals(0, rows.get(7).nearRight());
  }

  /** 25 long the far disc is pushed out by 1, and its strip with it off the fabric. */
  @Test
  void aStripPushedOffTheFabricIsNotOffered() {
    BiasCutting cutting = cutting(94, 2);
    List<CornerStrips> rows = cutting.cornerStrips(cutting.attempt(5, 0));
    assertEquals(3.150009, rows.get(0).nearRight(), 1e-6);
    assertEquals(0, rows.get(0).farRight());
    assertEquals(0, rows.get(0).farLeft());
    assertEquals(0, rows.get(0).nearLane());
  }

  /** One disc only: the far corner is bare. */
  @Test
  void aCornerWithoutADiscHasNothingBesideOne() {
    BiasCutting cutting = cutting(94, 1);
    List<CornerStrips> rows = cutting.cornerStrips(cutting.attempt(4, 0));
    assertEquals(3.150009, rows.get(0).nearRight(), 1e-6);
    assertEquals(3.029437, rows.get(0).nearLeft(), 1e-6);
    assertEquals(0, rows.get(0).farRight());
    assertEquals(0, rows.get(0).farLeft());
    assertEquals(2 * ROOT2, rows.get(0).farLane(), 1e-9);
  }

  /**
   * Strips 1 wide beside a disc of 12, whose centre is 6√2 from the corner: the inner line of the
   * sixth runs through it and is cut to 6√2 − 6. Its other piece clears the rim at half a chord of
   * √35, 1 past the centre: 6√2 − 1 − √35 = 1.57 is shorter than 2.
   */
  @Test
  void sixStripsMayLieBesideADisc() {
    Pieces pieces = new Pieces(1, 94, 0, 2, 1, 12, .125);
    Join join = new Join(true, .5, 1);
    BiasCutting cutting = BiasCutting.of(new Fabric(30, 1, 40), pieces, join);
    List<CornerStrips> rows = cutting.cornerStrips(cutting.attempt(1, 0));
    assertEquals(6 * ROOT2 - 6, rows.get(5).nearRight(), 1e-8);
    assertEquals(0, rows.get(5).nearLeft());
    assertEquals(0, rows.get(6).nearRight());
  }

  /**
   * 4, 6 and 5 steps are tried. (94√2 + 2 × 26.950604) ÷ 10 = 18.68, four steps. After seven full
   * strips, 91.994949, 1.005051 is wanted: one piece of 3.150009.
   */
  @Test
  void thePlanIsTheShortestThatIsEnough() {
    BiasFinding finding = BiasFinding.of(cutting(94, 2), true, new SearchReach(3, 1));
    BiasPlan plan = finding.plan().orElseThrow();
    assertEquals(3, finding.trials().size());
    assertEquals(5, plan.length().steps());
    assertEquals(25, plan.buyLength());
    assertEquals(20, plan.length().lowerBound());
    assertEquals(1.25, plan.length().ratio());
    assertEquals(3, plan.length().row());
    assertEquals(25, plan.usableLength());
    assertEquals(10 * ROOT2, plan.stripLength(), 1e-9);
    assertEquals(7, plan.full());
    assertEquals(8, plan.cut().all().count());
    assertEquals(1, plan.cut().all().odd());
    assertEquals(7, plan.cut().joinCount());
    assertEquals(finding.corners(), cutting(94, 2).cornerStrips(finding.trials().get(2)));
    assertEquals(3.150009, finding.odd().get(0).odd(), 1e-6);
  }

  @Test
  void thePlanTellsWhereItsDiscsAre() {
    BiasPlan plan =
        BiasFinding.of(cutting(94, 2), true, new SearchReach(3, 1)).plan().orElseThrow();
    assertTrue(plan.usesCorners());
    assertEquals(2, plan.cornerDiscs());
    assertEquals(0, plan.bandLength());
    assertEquals(10, plan.near(), 1e-9);
    assertEquals(11, plan.far(), 1e-9);
    assertEquals(0, plan.nearSlack(), 1e-9);
    assertEquals(1, plan.farSlack(), 1e-9);
  }

  /**
   * Three discs of 3 side by side take one band of 3 off 23, and the strips on the 20 left add 98√2
   * − 13 as above. With two of them in the corners the third would take a band all the same.
   */
  @Test
  void discsThatFillABandLeaveTheCornersFree() {
    Pieces pieces = new Pieces(ROOT2, 100, 0, 2 * ROOT2, 3, 3, .125);
    Join join = new Join(true, 1, 1);
    BiasCutting cutting = BiasCutting.of(new Fabric(10, 1, 23), pieces, join);
    BiasFinding finding = BiasFinding.of(cutting, true, new SearchReach(1, 1));
    BiasPlan plan = finding.plan().orElseThrow();
    assertFalse(plan.usesCorners());
    assertEquals(0, plan.cornerDiscs());
    assertEquals(3, plan.bandLength());
    assertEquals(20, plan.longer());
    assertEquals(5, plan.full());
    assertEquals(0, finding.corners().get(0).nearRight());
    assertEquals(98 * ROOT2 - 13 - 99, finding.trials().get(0).better().over(), 1e-8);
  }

  @Test
  void fabricTooNarrowIsNotSearched() {
    BiasFinding finding = BiasFinding.of(cutting(94, 2), false, new SearchReach(3, 1));
    assertEquals(List.of(), finding.trials());
    assertTrue(finding.plan().isEmpty());
    assertEquals(List.of(), finding.corners());
    assertEquals(0, finding.odd().get(0).odd());
  }
}
