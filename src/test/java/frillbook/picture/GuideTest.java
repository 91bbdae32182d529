package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import java.util.List;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GuideTest {
  private static Drawn drawn(Briefs briefs) {
    return Drawn.of(briefs).orElseThrow();
  }

  /** commons-math3: ∫√(r² + r′²)dφ along r = 0.5 + 0.75·turns, times 2.5, after half of 1 in. */
  @Test
  void aMarkIsTheStripUsedSoFar() {
    for (var point : drawn(Briefs.inch()).set().guide().guides()) {
      double sewn =
          point.guideTurn() == 0
              ? 0
              : new IterativeLegendreGaussIntegrator(24, 1e-11, 1e-11)
                  .integrate(
                      1_000_000,
                      t -> Math.hypot(2 * Math.PI * (.5 + .75 * t), .75),
                      0,
                      point.guideTurn());
      assertEquals(.5 + 2.5 * sewn, point.guideMark(), 1e-7);
    }
  }

  /** The table of the rings says the same at the end of every ring. */
  @ParameterizedTest
  @CsvSource({"spiral,1.6", "rings,2"})
  void itMeetsTheTableOfRings(String style, double spacing) {
    Drawn drawn = drawn(Briefs.inch().with("row_style", style).with("ring_spacing", spacing));
    var rings = drawn.plan().work().orElseThrow().rings();
    assertEquals(5, rings.ringCount());
    List<Guide.GuidePoint> points = drawn.set().guide().guides();
    for (int ring = 1; ring <= 5; ring++) {
      var point = points.get(6 * ring);
      assertEquals(ring, point.guideTurn(), 1e-12);
      assertEquals(rings.rings().get(ring - 1).runningFlat(), point.guideMark(), 1e-9);
    }
  }

  @Test
  void everyJoinLiesOnTheGuide() {
    int compared = 0;
    for (Drawn one : Drawn.sample(SampleBriefs.layouts(60), 20250404)) {
      List<Guide.GuidePoint> points = one.set().guide().guides();
      double turns = one.set().guide().guideTurns();
      for (var join : one.set().guide().guideJoins()) {
        int i = (int) Math.min(29, Math.floor(join.guideJoinTurn() / turns * 30));
        double low = points.get(i).guideMark();
        double high = points.get(i + 1).guideMark();
        double end = one.briefs().brief().frill().endAllowance() / 2;
        assertTrue(join.guideJoinMark() >= low - end - 1e-4, one.what());
        assertTrue(join.guideJoinMark() <= high + end + 1e-4, one.what());
        compared++;
      }
    }
    assertTrue(compared > SampleBriefs.layouts(60) * 5 / 3, "too few joins: " + compared);
  }

  /**
   * By hand: with no gap at the centre half of the area lies within 1/√2 of the radius, so half of
   * the strip is used after .707 of the rings; points stand a thirtieth apart.
   */
  @Test
  void halfOfTheStripIsUsedAfterSevenTenthsOfTheRings() {
    Guide guide = drawn(Briefs.inch().with("centre_gap", 0)).set().guide();
    assertEquals(Math.sqrt(.5), guide.guideHalf() / guide.guideTurns(), 1 / 30.0);
  }

  @Test
  void withoutJoinsTheMarksStandAtTheStart() {
    Guide guide =
        drawn(
                Briefs.inch()
                    .with("diameter", 4)
                    .with("ring_spacing", 1)
                    .with("centre_gap", 0)
                    .with("fullness", 1)
                    .with("edge_clearance", .5))
            .set()
            .guide();
    assertEquals(0, guide.guideJoinCount());
    assertTrue(guide.guideJoins().stream().allMatch(j -> j.guideJoinTurn() == 0));
  }
}
