package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.Grain;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class GrainRowTest {
  private static Work work(Briefs briefs) {
    return Plan.of(briefs.brief()).work().orElseThrow();
  }

  @Test
  void allThreeGrainsStandSideBySide() {
    assertEquals(
        List.of("across", "along", "bias"),
        work(Briefs.inch()).grains().stream().map(GrainRow::grainName).toList());
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void theRowOfTheChosenGrainAgreesWithThePlan(Grain grain) {
    Work work = work(Briefs.inch().with(grain));
    FrillCut total = work.cut().orElseThrow().total();
    assertEquals(
        new GrainRow.Figures(
            total.stripCount(), total.joinCount(), total.buyLength(), total.clothRatio()),
        work.grains().get(grain.ordinal()).figures().orElseThrow());
  }

  /** By hand: √2 × 11 − 2 × 2 1/4 = 11.06 in on the bias, less than a strip worth joining. */
  @Test
  void clothTooNarrowForOneGrainSaysSo() {
    Briefs narrow =
        Briefs.inch().with("fabric_width", 12).with("base_overlays", 0).with(Grain.ALONG);
    GrainRow bias = work(narrow).grains().get(2);
    assertEquals("cloth too narrow", bias.grainFits());
    assertTrue(bias.figures().isEmpty());
  }
}
