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
    for (var point : drawn(Briefs.inch()).guide().guides()) {
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
    var rings = drawn.plan().rows().orElseThrow().rings();
    assertEquals(5, rings.ringCount());
    List<Guide.GuidePoint> points = drawn.guide().guides();
    for (int ring = 1; ring <= 5; ring++) {
      var point = points.get(6 * ring);
      assertEquals(ring, point.guideTurn(), 1e-12);
      assertEquals(rings.rings().get(ring - 1).runningFlat(), point.guideMark(), 1e-9);
    }
  }

  /**
   * By hand: 10 2/3 turns and one more; 355.1687 in of line (301.7616 of spiral, 53.4071 of circle)
   * times 2.5, after half of 1 in.
   */
  @Test
  void itEndsWithTheClosingRing() {
    Guide guide = drawn(Briefs.inch().with("closing_ring", "yes")).guide();
    var end = guide.guides().get(30);
    assertEquals(11.6667, end.guideTurn(), 5e-5);
    assertEquals(12, end.guideRing());
    assertEquals(.5 + 2.5 * 355.1687, end.guideMark(), 5e-4);
  }

  @Test
  void everyJoinLiesOnTheGuide() {
    int compared = 0;
    for (Drawn one : Drawn.sample(SampleBriefs.layouts(60), 20250404)) {
      List<Guide.GuidePoint> points = one.guide().guides();
      double turns = one.guide().guideTurns();
      for (var join : one.guide().guideJoins()) {
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
    Guide guide = drawn(Briefs.inch().with("centre_gap", 0)).guide();
    assertEquals(Math.sqrt(.5), guide.guideHalf() / guide.guideTurns(), 1 / 30.0);
  }

  @Test
  void withoutJoinsTheMarksStandAtTheStart() {
    Drawn small =
        drawn(
            Briefs.inch()
                .with("diameter", 4)
                .with("ring_spacing", 1)
                .with("centre_gap", 0)
                .with("fullness", 1)
                .with("edge_clearance", .5));
    assertEquals(0, small.guideJoinCount());
    assertTrue(small.guide().guideJoins().stream().allMatch(j -> j.guideJoinTurn() == 0));
  }

  /**
   * G = (b/4π)(φ√(1 + φ²) + asinh φ), the length of a spiral from its middle, is what a sheet has.
   */
  @Test
  void aMarkIsTheSpiralsOwnLengthScaledAndMoved() {
    Guide guide = drawn(Briefs.inch()).guide();
    for (var point : guide.guides()) {
      double angle = point.guideAngle();
      double root = Math.sqrt(1 + angle * angle);
      double arc = angle * root + Math.log(angle + root);
      assertEquals(point.guideMark(), guide.guideZero() + guide.guideScale() * arc, 1e-9);
      assertEquals(2 * Math.PI * (.5 / .75 + point.guideTurn()), angle, 1e-9);
    }
  }

  /** By hand: five rings in thirty steps, six for each; the last point still lies in the fifth. */
  @ParameterizedTest
  @CsvSource({"0,1", "5,1", "6,2", "23,4", "24,5", "29,5", "30,5"})
  void everyPointLiesInItsRing(int point, int ring) {
    Briefs rings = Briefs.inch().with("row_style", "rings").with("ring_spacing", 2);
    assertEquals(ring, drawn(rings).guide().guides().get(point).guideRing());
  }

  /** 15 strips, 14 joins (worked at the title of the fabric): the last six are the fourteenth. */
  @Test
  void whereJoinsAreFewTheLastIsMarkedAgain() {
    Drawn bare = drawn(Briefs.inch().with("matching_discs", 0));
    Guide guide = bare.guide();
    assertEquals(14, bare.guideJoinCount());
    assertEquals(20, guide.guideJoins().size());
    // 53 − 5/8 to the middle of the first seam, 51 3/4 to the next.
    assertEquals(52.375, guide.guideJoins().get(0).guideJoinMark(), 1e-9);
    assertEquals(52.375 + 51.75, guide.guideJoins().get(1).guideJoinMark(), 1e-9);
    assertEquals(52.375 + 13 * 51.75, guide.guideJoins().get(13).guideJoinMark(), 1e-9);
    assertEquals(guide.guideJoins().get(13), guide.guideJoins().get(19));
  }

  /** The second of two frills has its own guide. */
  @Test
  void onlyTheFirstCushionsJoinsAreMarked() {
    Drawn two = drawn(Briefs.inch().with("matching_discs", 0).with("quantity", 2));
    assertEquals(14, two.guideJoinCount());
  }
}
