package frillbook.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What follows from one part of a brief alone. */
class SpecsTest {
  private static final Briefs BRIEFS = Briefs.inch();

  /** One cushion has one strip either way; three have one or three. */
  @ParameterizedTest
  @CsvSource({
    "order,1,1,1",
    "cushion,1,1,1",
    "order,3,1,1.02",
    "cushion,3,3,1",
  })
  void oneStripForSeveralIsJoinedALittleLonger(
      String joinedBy, int quantity, int strips, double share) {
    Brief brief =
        BRIEFS
            .with("joined_by", joinedBy)
            .with("quantity", quantity)
            .with("joined_margin", .02)
            .brief();
    assertEquals(strips > 1, brief.ownStrips());
    assertEquals(strips, brief.joinedStrips());
    assertEquals(share, brief.joinedShare());
  }

  @Test
  void otherLooksAndAPriceOfOnesOwnMayBeLeftOut() {
    assertTrue(Brief.optionalInputs().contains("own_price"));
    assertTrue(Brief.optionalInputs().contains("choice_two_more"));
    assertFalse(Brief.optionalInputs().contains("diameter"));
  }

  /** Binary sums a hair short of 1 are 1. */
  @ParameterizedTest
  @CsvSource({"2.5,true", "1,true", "0.99999999999,true", "0.99,false", "0.5,false"})
  void aStripAsLongAsItsLineIsGathered(double fullness, boolean gathered) {
    assertEquals(gathered, new LookSpec(fullness, .75).isGathered());
  }

  @ParameterizedTest
  @CsvSource({"0.25,true", "0.74,true", "0.75,false", "0.74999999999,false", "1,false"})
  void anInsetAsWideAsTheSpacingReachesTheRowBefore(double inset, boolean clear) {
    assertEquals(clear, new LookSpec(2.5, .75).clears(inset));
  }

  @ParameterizedTest
  @CsvSource({"machine,true,2.5", "hand,false,1.2"})
  void onlyMachineGathersArePulledUpAfterwards(String way, boolean pulledUp, double ratio) {
    ThreadSpec thread = BRIEFS.with("gather_by", way).brief().thread();
    assertEquals(pulledUp, thread.pulledUp());
    assertEquals(ratio, thread.gatherThreadRatio());
  }

  @ParameterizedTest
  @CsvSource({"NARROW_HEM,2.5", "OVERLOCKED,12", "ROLLED,12"})
  void aHemIsSewnLikeAnySeam(EdgeFinish edge, double ratio) {
    assertEquals(ratio, BRIEFS.brief().thread().edgeThreadRatio(edge));
  }

  @ParameterizedTest
  @CsvSource({"spiral,no,1,false", "spiral,yes,1,true", "rings,no,7,false", "rings,yes,7,false"})
  void onlyASpiralIsClosedAndOnlyRingsAreManyFrills(
      String style, String closing, int frills, boolean closed) {
    CushionSpec cushion =
        BRIEFS.with("row_style", style).with("closing_ring", closing).brief().cushion();
    assertEquals(frills, cushion.frills(7));
    assertEquals(closed, cushion.isClosed());
  }

  /** By hand: 2 1/2 times full less 1/2, 3/4 in apart; and 1/2 more, 1 in apart. */
  @Test
  void otherLooksDifferFromTheBriefsOwn() {
    ChoiceSpec choices = BRIEFS.with("choice_three_spacing", 1).brief().choices();
    LookSpec own = new LookSpec(2.5, .75);
    assertEquals(Optional.of(new LookSpec(2, .75)), choices.two(own));
    assertEquals(Optional.of(new LookSpec(3, 1)), choices.three(own));
  }

  @Test
  void aLookLeftOutIsNone() {
    ChoiceSpec choices =
        BRIEFS.with("choice_two_more", "").with("choice_three_more", "").brief().choices();
    assertEquals(Optional.empty(), choices.two(new LookSpec(2.5, .75)));
    assertEquals(Optional.empty(), choices.three(new LookSpec(2.5, .75)));
  }

  /** By hand: what sewing draws in by 4 % is marked 1 ÷ 0.96 = 1.041667 times as large. */
  @Test
  void theBaseIsMarkedLargerByWhatSewingDrawsIn() {
    assertEquals(1.041667, BRIEFS.brief().base().markedGrowth(), 5e-7);
  }

  /** 18 × 1/0.96 is 18 3/4; programs differ in how they show a half just below itself. */
  @Test
  void theBaseIsMarkedAHairLargerRatherThanSmaller() {
    double growth = BRIEFS.brief().base().markedGrowth();
    assertTrue(18 * growth > 18.75 && 18 * growth < 18.75 + 1e-8, growth + "");
  }

  @ParameterizedTest
  @CsvSource({"each,1", "order,4"})
  void taxIsRoundedOnOneOrOnAll(String rounding, int together) {
    assertEquals(together, BRIEFS.with("tax_rounding", rounding).brief().money().taxedTogether(4));
  }

  @ParameterizedTest
  @CsvSource({
    "loose_fibre,soft,8",
    "loose_fibre,medium,10.8",
    "ready_pad,firm,14",
    "foam_disc,soft,25"
  })
  void foamIsAsDenseAsItIsSoldAndFibreAsItIsFilled(String filling, String firmness, double grams) {
    Briefs filled =
        BRIEFS
            .with("fill_soft", 8)
            .with("fill_firm", 14)
            .with("foam_density", 25)
            .with("filling", filling)
            .with("fill_firmness", firmness);
    assertEquals(grams, filled.brief().fill().density());
  }

  /** Either way the machine or the table is made ready once. */
  @Test
  void gatheringByHandHasARateOfItsOwn() {
    TimeSpec times = BRIEFS.with("gather_rate", .5).brief().times();
    assertEquals(new TaskSpec(.5, 10), times.gatherBy(ThreadSpec.GatherBy.MACHINE));
    assertEquals(new TaskSpec(1.75, 10), times.gatherBy(ThreadSpec.GatherBy.HAND));
  }
}
