package frillbook.grains;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Sample;
import frillbook.SampleBriefs;
import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.brief.JoinLine;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.discs.DiscSizes;
import frillbook.measure.Rounding;
import frillbook.plan.Plan;
import frillbook.rows.Rings;
import frillbook.rows.RowSizes;
import frillbook.strip.StripLength;
import frillbook.strip.StripSizes;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The halving search against trying every length in turn.
 *
 * <p>Halving finds the shortest length for certain only if every longer one is enough too. Discs
 * that jump from one line or band to the next can break that rule; these tests say how often.
 */
class ShortestLengthTest {
  private static final int EVERY_NTH = 17;

  private static final int LEAST_PLANS = Sample.size(1000, EVERY_NTH);

  private static FrillCutting cutting(Brief brief) {
    StripSizes strip = StripSizes.of(brief);
    DiscSizes discs = DiscSizes.of(brief);
    double stitched = Rings.of(brief, RowSizes.of(brief.cushion())).stitchedLength();
    Pieces pieces =
        new Pieces(
            strip.straightCutWidth(),
            StripLength.of(brief, stitched).orderFlatLength(),
            brief.fabric().spareStrips(),
            brief.fabric().shortestPiece(),
            discs.matchingDiscCount(),
            discs.baseCutDiameter(),
            brief.markingStep());
    Fabric fabric = Fabric.of(brief.fabric(), brief.fabric().fabricWidth());
    return FrillCutting.of(brief, strip.seamLoss(), fabric, pieces, strip.biasCutWidth());
  }

  private static IntPredicate enough(FrillCutting cutting, Grain grain) {
    return switch (grain) {
      case CROSSWISE -> steps -> cutting.crosswise().attempt(steps, 0).enough();
      case LENGTHWISE -> steps -> cutting.lengthwise().attempt(steps, 0).enough();
      case BIAS -> steps -> cutting.bias().attempt(steps, 0).enough();
    };
  }

  private static int found(FrillCutting cutting, Grain grain) {
    GrainPlans layouts = GrainPlans.of(cutting, cutting.starts(), grain);
    double length = layouts.plan(grain).orElseThrow().buyLength();
    return Rounding.up(length / cutting.crosswise().fabric().buyStep());
  }

  private static List<Brief> benchmark(Grain grain) {
    return Sample.of(CuttingBenchmark.grid(grain, JoinLine.BY_GRAIN), EVERY_NTH);
  }

  /** Briefs at random that have a plan in {@code grain} and take no more than 1000 steps. */
  private static List<Brief> atRandom(Grain grain) {
    return Sample.of(SampleBriefs.of(2000, 20250103), EVERY_NTH).stream()
        .map(briefs -> briefs.with(grain).brief())
        .filter(brief -> steps(brief, grain) <= 1000)
        .toList();
  }

  private static int steps(Brief brief, Grain grain) {
    return Plan.of(brief)
        .cutting()
        .flatMap(cutting -> cutting.layouts().plan(grain))
        .map(plan -> Rounding.up(plan.buyLength() / brief.fabric().buyStep()))
        .orElse(Integer.MAX_VALUE);
  }

  /** By how many steps the search misses the shortest length that is enough. */
  private static int missedBy(Brief brief, Grain grain) {
    FrillCutting cutting = cutting(brief);
    int found = found(cutting, grain);
    IntPredicate enough = enough(cutting, grain);
    return found - IntStream.rangeClosed(1, found).filter(enough).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void theFoundLengthIsEnoughAndOneStepLessIsNot(Grain grain) {
    for (Brief brief : benchmark(grain)) {
      FrillCutting cutting = cutting(brief);
      int found = found(cutting, grain);
      assertTrue(enough(cutting, grain).test(found), brief::toString);
      assertFalse(enough(cutting, grain).test(found - 1), brief::toString);
    }
  }

  /** Found: in none of 3024 briefs of any grain is a shorter length enough. */
  @ParameterizedTest
  @EnumSource(Grain.class)
  void overTheBenchmarkNoShorterLengthIsMissed(Grain grain) {
    for (Brief brief : benchmark(grain)) {
      assertEquals(0, missedBy(brief, grain), brief::toString);
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Grain.class,
      names = {"CROSSWISE", "LENGTHWISE"})
  void onStraightGrainNoShorterLengthIsMissedAtRandom(Grain grain) {
    List<Brief> briefs = atRandom(grain);
    assertTrue(briefs.size() > LEAST_PLANS, () -> "too few plans: " + briefs.size());
    for (Brief brief : briefs) {
      assertEquals(0, missedBy(brief, grain), brief::toString);
    }
  }

  /** Found: in none of 1916. */
  @Test
  void onTheBiasAShorterLengthIsMissedInFewerThanOneOfAHundredAtRandom() {
    List<Brief> briefs = atRandom(Grain.BIAS);
    long missed = briefs.stream().filter(brief -> missedBy(brief, Grain.BIAS) > 0).count();
    assertTrue(briefs.size() > LEAST_PLANS, () -> "too few plans: " + briefs.size());
    assertTrue(missed < briefs.size() / 100, () -> missed + " of " + briefs.size());
  }
}
