package frillbook.grains;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.bias.BiasComb;
import frillbook.bias.BiasPlan;
import frillbook.bias.BiasTrial;
import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.cutting.StripsCut;
import frillbook.strip.Join;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures that others have printed, or that follow from them. */
class PublishedCuttingTest {
  private static final Brief BRIEF = Briefs.inch().brief();

  /** Strips for a run, and no discs. */
  private static FrillCutting cutting(
      double fabricWidth, double stripWidth, double run, double loss) {
    Pieces pieces = new Pieces(stripWidth, run, 0, 6, 0, 10, .125);
    return FrillCutting.of(BRIEF, loss, new Fabric(fabricWidth, 1, 4.5), pieces, stripWidth);
  }

  private static GrainPlans layouts(FrillCutting cutting) {
    return GrainPlans.of(cutting, cutting.starts(), Grain.CROSSWISE);
  }

  /**
   * 108 in from 36 in fabric takes 3 strips: Baldt, Clothing for Women (1916). With seams of 1/2 in
   * on either edge each of two joins loses 1 in, and 106 in is too short: 4.
   */
  @ParameterizedTest
  @CsvSource({"0,3,2", "1,4,3"})
  void stripsAcrossTheFabricAreCountedAsInPrint(double loss, int strips, int joins) {
    StripsCut cut = layouts(cutting(36, 3, 108, loss)).crosswise().orElseThrow().cut();
    assertEquals(strips, cut.all().count());
    assertEquals(joins, cut.joinCount());
  }

  /** Width × √2, true bias being 45°: Burton, School Sewing (1916) ¶143; figures computed. */
  @ParameterizedTest
  @CsvSource({"36,50.91", "45,63.64"})
  void aFullBiasStripIsRootTwoTimesTheWidthOfTheFabric(double fabricWidth, double length) {
    BiasPlan plan = layouts(cutting(fabricWidth, 2, 2000, 1)).bias().orElseThrow();
    assertTrue(plan.usableLength() > fabricWidth, "the fabric must be longer than it is wide");
    assertEquals(length, plan.stripLength(), .005);
  }

  /**
   * A printed leaflet of unknown origin promises "about 10 yd" of bias 1 1/4 in wide from 1/4 yd of
   * 40 in fabric. The area allows 9 × 40 ÷ 1.25 = 288 in, which is 8.00 yd.
   */
  @Test
  void noMoreBiasIsPromisedThanTheFabricHasArea() {
    FrillCutting cutting = cutting(40, 1.25, 360, 0);
    BiasTrial quarterYard = cutting.bias().attempt(2, 0);
    Join join = cutting.bias().join();
    BiasComb comb = quarterYard.better();
    double offered = comb.over() + cutting.bias().pieces().netNeeded(join, comb.fullStrip());
    assertEquals(9, quarterYard.usable());
    assertTrue(offered <= 288, () -> "offered " + offered);
    assertTrue(offered > 200, () -> "a likely yield, not none: " + offered);
  }
}
