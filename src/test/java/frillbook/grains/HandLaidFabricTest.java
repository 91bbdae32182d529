package frillbook.grains;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.OddPiece;
import frillbook.cutting.Pieces;
import frillbook.cutting.SearchReach;
import frillbook.cutting.StripsCut;
import frillbook.cutting.Tally;
import frillbook.straight.LaneRow;
import frillbook.straight.StraightPlan;
import frillbook.straight.StraightTrial;
import frillbook.strip.Join;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A fabric 50 in wide, sold by 4 in, for a run of 500 from strips 2 wide with seams of 1, none
 * shorter than 12, and three discs of 10; laid by hand.
 *
 * <p>Across, two discs in the first line and one in the second leave 28 − 20 in for four full
 * strips, which add 4 × 49. Lanes of 35 and 45 less half chords of 4, √24, 5, √24, 4 add 147.202
 * and 197.202: 540.404 for the 499 needed. All three in a line make nine full strips and one set of
 * lanes of 25, 538.202. On 24 in either way adds less than 443.
 *
 * <p>Along, 28 in hold two discs in a line at most: fifteen full strips that add 27 and lanes of 23
 * in beside the last line, 492.202. One in a line takes 30 of the 50 in and leaves ten full strips
 * and three sets of lanes of 23: 531.606. On 24 in neither adds 432.
 */
class HandLaidFabricTest {
  private static final double ROOT24 = Math.sqrt(24);

  private static final Fabric FABRIC = new Fabric(50, 1, 4);

  private static final double BOUND = (1000 + 75 * Math.PI) / 50;

  private static FrillCutting cutting(Fabric fabric) {
    return cutting(fabric, 2);
  }

  private static FrillCutting cutting(Fabric fabric, double biasWidth) {
    Brief brief = Briefs.inch().with("bias_stretch", .25).brief();
    return FrillCutting.of(brief, 1, fabric, new Pieces(2, 500, 0, 12, 3, 10, .125), biasWidth);
  }

  private static GrainPlans layouts(Grain chosen) {
    FrillCutting cutting = cutting(FABRIC);
    return GrainPlans.of(cutting, cutting.starts(), chosen);
  }

  /** (500 × 2 + 3 × 25π) ÷ 50 = 24.712. */
  @Test
  void noFabricShorterThanItsPiecesWillDo() {
    assertEquals(BOUND, cutting(FABRIC).leastLength(), 1e-9);
    assertEquals(BOUND, layouts(Grain.CROSSWISE).leastLength(), 1e-9);
  }

  /** On the bias 400 in stretch to 500: (400 × 2 + 3 × 25π) ÷ 50. */
  @Test
  void stretchingStripsUseLessFabric() {
    assertEquals(BOUND, cutting(FABRIC).usedLength(Grain.LENGTHWISE), 1e-9);
    assertEquals((800 + 75 * Math.PI) / 50, cutting(FABRIC).usedLength(Grain.BIAS), 1e-9);
  }

  /**
   * Cut 3 wide, strips on the bias take 400 × 3 in², and lines lie 3√2 apart; across and along the
   * fabric nothing changes.
   */
  @Test
  void biasStripsHaveAWidthOfTheirOwn() {
    FrillCutting cutting = cutting(FABRIC, 3);
    assertEquals(BOUND, cutting.leastLength(), 1e-9);
    assertEquals(BOUND, cutting.usedLength(Grain.CROSSWISE), 1e-9);
    assertEquals((1200 + 75 * Math.PI) / 50, cutting.usedLength(Grain.BIAS), 1e-9);
    assertEquals(4.242641, cutting.bias().lineStep(), 5e-7);
    assertEquals(2, cutting.lengthwise().pieces().stripWidth());
  }

  /**
   * The shortest strip of 12 and 3 at either end are 18, which is √2 × 12.72792; strips 2 wide need
   * √2 × 11.31371.
   */
  @Test
  void theFabricMustHoldABiasStripAsWideAsItIsCut() {
    assertTrue(cutting(new Fabric(12.728, 1, 4), 3).starts().bias().can());
    assertFalse(cutting(new Fabric(12.727, 1, 4), 3).starts().bias().can());
    assertTrue(cutting(new Fabric(12.727, 1, 4), 2).starts().bias().can());
  }

  /** 10 × 24.712 × 3 ÷ 2 + 124 = 494.68 is 141.3 steps of 3.5, eight rows; else 106.0, seven. */
  @Test
  void theSearchReachesFartherForWiderBiasStrips() {
    FrillCutting wider = cutting(new Fabric(50, 1, 3.5), 3);
    assertEquals(8, wider.reach(wider.starts()).searchRows());
    FrillCutting alike = cutting(new Fabric(50, 1, 3.5));
    assertEquals(7, alike.reach(alike.starts()).searchRows());
  }

  /**
   * 10 × 24.712 + 2 × 50 + 2 × 12 = 371.124 is 92.8 steps of 4, so seven rows, which reach 127;
   * 65.1 steps of 5.7, seven also, and of 6 after washing to 0.95; but 63.9 steps of 5.81 are six.
   * Fourteen are the most.
   */
  @ParameterizedTest
  @CsvSource({"1,4,7", "1,5.7,7", ".95,6,7", "1,5.81,6", "1,1000,1", "1,.00001,14"})
  void theSearchReachesTenTimesTheLeastLengthAndMore(double share, double step, int rows) {
    FrillCutting cutting = cutting(new Fabric(50, share, step));
    assertEquals(rows, cutting.reach(cutting.starts()).searchRows());
  }

  /**
   * 371.124 in are 371,124 steps of .001, which is 22.7 times 2¹⁴; so 23 are tried at a time. On
   * less than 28 in strips across add 491.402 or 489.202, since one full strip less lies there. 28
   * in are 28,000 steps, and the first 23 steps that reach so far are the 1218th.
   */
  @Test
  void anOrderOfVeryManyStepsIsSearchedInWiderOnes() {
    FrillCutting cutting = cutting(new Fabric(50, 1, .001));
    assertEquals(new SearchReach(14, 23), cutting.reach(cutting.starts()));
    GrainPlans layouts = GrainPlans.of(cutting, cutting.starts(), Grain.CROSSWISE);
    StraightPlan plan = layouts.crosswise().orElseThrow();
    assertEquals(1218 * 23, plan.length().steps());
    assertEquals(28.014, plan.buyLength(), 1e-9);
    GrainSearch search = GrainSearch.of(cutting, cutting.starts(), Grain.CROSSWISE);
    assertEquals(28.014, search.buyLength().orElseThrow(), 1e-9);
  }

  /** 371.124 in are 63.9 steps of 5.81, six rows; with 2 in lost at the ends 64.2, seven rows. */
  @Test
  void theSearchReachesPastWhatStraighteningTakes() {
    FrillCutting cutting = cutting(new Fabric(50, 1, 5.81, 2));
    assertEquals(7, cutting.reach(cutting.starts()).searchRows());
  }

  @Test
  void crosswiseTheFabricTwoDiscsInALineAreBest() {
    GrainPlans layouts = layouts(Grain.CROSSWISE);
    assertTrue(layouts.crosswiseFits());
    StraightPlan plan = layouts.crosswise().orElseThrow();
    assertEquals(7, plan.length().steps());
    assertEquals(28, plan.buyLength());
    assertEquals(28, plan.length().lowerBound());
    assertEquals(1, plan.length().ratio());
    assertEquals(28, plan.usableLength());
    assertEquals(50, plan.stripLength());
    assertTrue(plan.isStacked());
    assertEquals(2, plan.perLine());
    assertEquals(2, plan.lines());
    assertEquals(4, plan.full());
    assertEquals(10, plan.laneCount());
    assertEquals(5, plan.whole());
    assertEquals(35, plan.reachWhole());
    assertEquals(45, plan.reachLast());
  }

  /** Of 127 lengths 64, 32, 16 and 8 steps are tried, then 4, 6 and 7: the seventh row. */
  @Test
  void theRowOfTheSearchThatFoundItIsTold() {
    GrainPlans layouts = layouts(Grain.CROSSWISE);
    assertEquals(7, layouts.reach().searchRows());
    assertEquals(
        List.of(64, 32, 16, 8, 4, 6, 7),
        layouts.crosswiseTrials().stream().map(StraightTrial::tried).toList());
    assertEquals(7, layouts.crosswise().orElseThrow().length().row());
  }

  /**
   * 499 − 4 × 49 = 303. Nine odd strips add it: 41, 41, twice 45 − √24, 40, 31, 31 and twice 35 −
   * √24 less a seam each are 315.404; the last but one leaves 286.303.
   */
  @Test
  void crosswiseTheFabricNineOddStripsAreCut() {
    GrainPlans layouts = layouts(Grain.CROSSWISE);
    StripsCut cut = layouts.crosswise().orElseThrow().cut();
    assertEquals(new Tally(499, 4, 303, 9, 13), cut.all());
    assertEquals(cut.all(), cut.run());
    assertEquals(12, cut.joinCount());
    double middling = 45 - ROOT24;
    double shorter = 35 - ROOT24;
    double[] cutLengths = {41, 41, middling, middling, 40, 31, 31, shorter, shorter};
    assertArrayEquals(
        cutLengths, layouts.oddLengths(layouts.crosswise().orElseThrow()).toArray(), 1e-8);
  }

  @Test
  void theLongestStripsAddUpToTheirNet() {
    GrainPlans layouts = layouts(Grain.CROSSWISE);
    StraightPlan plan = layouts.crosswise().orElseThrow();
    Join join = new Join(false, 1, 1);
    assertEquals(3 * 49, layouts.netOf(3, plan, join), 1e-9);
    assertEquals(4 * 49, layouts.netOf(4, plan, join), 1e-9);
    assertEquals(4 * 49 + 40, layouts.netOf(5, plan, join), 1e-9);
    assertEquals(4 * 49 + 40 + 40 + 44 - ROOT24, layouts.netOf(7, plan, join), 1e-8);
  }

  @Test
  void lengthwiseTheFabricOneDiscInALineIsBest() {
    StraightPlan plan = layouts(Grain.LENGTHWISE).lengthwise().orElseThrow();
    assertEquals(28, plan.buyLength());
    assertEquals(28, plan.stripLength());
    assertTrue(plan.isStacked());
    assertEquals(1, plan.perLine());
    assertEquals(3, plan.lines());
    assertEquals(10, plan.full());
    assertEquals(15, plan.laneCount());
    assertEquals(10, plan.whole());
    assertEquals(23, plan.reachWhole());
    assertEquals(23, plan.reachLast());
  }

  /**
   * 499 − 10 × 27 = 229: six strips of 19 add 18 each, six of 23 − √24 add 17.101, and the first of
   * 18 leaves 1.394 to be added: two of them.
   */
  @Test
  void lengthwiseTheFabricFourteenOddStripsAreCut() {
    StripsCut cut = layouts(Grain.LENGTHWISE).lengthwise().orElseThrow().cut();
    assertEquals(new Tally(499, 10, 229, 14, 24), cut.all());
    assertEquals(23, cut.joinCount());
  }

  /** Lanes one to five run past the whole line across and past the first along. */
  @Test
  void everyLaneTellsItsStripInEitherGrain() {
    List<LaneRow> lanes = layouts(Grain.CROSSWISE).lanes();
    assertEquals(32, lanes.size());
    assertEquals(31, lanes.get(0).crosswise().piece(), 1e-9);
    assertEquals(19, lanes.get(0).lengthwise().piece(), 1e-9);
    assertEquals(41, lanes.get(5).crosswise().piece(), 1e-9);
    assertEquals(0, lanes.get(10).crosswise().piece());
    assertEquals(18, lanes.get(12).lengthwise().piece(), 1e-9);
    assertEquals(0, lanes.get(15).lengthwise().piece());
    assertEquals(3, lanes.get(5).lane().laneOffset(), 1e-9);
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void oddStripsAreThoseOfTheChosenGrain(Grain grain) {
    GrainPlans layouts = layouts(grain);
    assertEquals(72, layouts.odds().size());
    OddRow second = layouts.odds().get(1);
    OddPiece chosen =
        switch (grain) {
          case CROSSWISE -> second.crosswise();
          case LENGTHWISE -> second.lengthwise();
          case BIAS -> second.bias().piece();
        };
    assertEquals(2, second.oddNo());
    assertEquals(chosen.odd(), second.oddPiece());
    assertEquals(chosen.oddJoined(), second.oddJoined());
    assertEquals(41, second.crosswise().odd(), 1e-9);
    assertEquals(80, second.crosswise().oddJoined(), 1e-9);
    assertEquals(19, second.lengthwise().odd(), 1e-9);
    assertEquals(36, second.lengthwise().oddJoined(), 1e-9);
  }

  @Test
  void everyGrainHasItsOwnPlan() {
    GrainPlans layouts = layouts(Grain.CROSSWISE);
    assertEquals(layouts.crosswise(), layouts.plan(Grain.CROSSWISE));
    assertEquals(layouts.lengthwise(), layouts.plan(Grain.LENGTHWISE));
    assertEquals(layouts.bias(), layouts.plan(Grain.BIAS));
    assertTrue(layouts.biasFits());
  }

  /** 11 in hold no strip of 12 across, and no bias strip; along the fabric one disc and lanes. */
  @Test
  void fabricTooNarrowForAGrainIsNotSearchedInIt() {
    FrillCutting cutting = cutting(new Fabric(11, 1, 4));
    GrainPlans layouts = GrainPlans.of(cutting, cutting.starts(), Grain.LENGTHWISE);
    assertEquals(List.of(), layouts.crosswiseTrials());
    assertEquals(Optional.empty(), layouts.plan(Grain.CROSSWISE));
    assertEquals(List.of(), layouts.biasTrials());
    assertEquals(Optional.empty(), layouts.plan(Grain.BIAS));
    assertTrue(layouts.plan(Grain.LENGTHWISE).isPresent());
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void aSearchInOneGrainFindsWhatTheLayoutFinds(Grain grain) {
    FrillCutting cutting = cutting(FABRIC);
    GrainSearch search = GrainSearch.of(cutting, cutting.starts(), grain);
    GrainPlans layouts = layouts(grain);
    assertEquals(layouts.plan(grain).map(GrainPlan::buyLength), search.buyLength());
    assertEquals(grain == Grain.BIAS ? 0 : 7, search.straightTrials().size());
    assertEquals(grain == Grain.BIAS ? layouts.biasTrials() : List.of(), search.biasTrials());
  }

  /** 64 steps of 4 are 256 in; strips along the fabric see them lengthwise. */
  @Test
  void aSearchTellsTheSheetThatTheStripsSee() {
    FrillCutting cutting = cutting(FABRIC);
    GrainSearch crosswise = GrainSearch.of(cutting, cutting.starts(), Grain.CROSSWISE);
    assertEquals(50, crosswise.straightTrials().get(0).run());
    assertEquals(256, crosswise.straightTrials().get(0).stack());
    assertEquals(64, crosswise.straightTrials().get(0).tried());
    GrainSearch lengthwise = GrainSearch.of(cutting, cutting.starts(), Grain.LENGTHWISE);
    assertEquals(256, lengthwise.straightTrials().get(0).run());
    assertEquals(50, lengthwise.straightTrials().get(0).stack());
  }

  /** A run of 500 in has one seam less than strips. */
  @Test
  void theRunNeedsWhatItIsLessOneSeam() {
    assertEquals(499, layouts(Grain.CROSSWISE).crosswiseNeed());
    assertEquals(499, layouts(Grain.CROSSWISE).lengthwiseNeed());
  }
}
