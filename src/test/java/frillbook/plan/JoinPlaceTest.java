package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import java.util.List;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Equal strips of 53 in with French joins that take 1 1/4 in: 51 3/4 in net. */
class JoinPlaceTest {
  private static final Briefs EQUAL_STRIPS = Briefs.inch().with("matching_discs", 0);

  private static List<JoinPlace> joins(Briefs briefs) {
    return Plan.of(briefs.brief()).cutting().orElseThrow().cut().orElseThrow().joins();
  }

  /** By hand: 53 − 5/8 = 52 3/8 to the middle of the first seam, 51 3/4 from each to the next. */
  @Test
  void seamsAreOneNetStripApart() {
    List<JoinPlace> joins = joins(EQUAL_STRIPS);
    assertTrue(joins.size() > 10, joins::toString);
    for (JoinPlace join : joins) {
      assertEquals(.625 + 51.75 * join.joinNo(), join.joinAt(), 1e-9, join::toString);
      assertEquals(join.joinAt(), join.joinMark(), 1e-9, join::toString);
      assertEquals(1, join.joinCushion());
    }
  }

  /**
   * By hand: (52.375 − 0.5) ÷ 2.5 = 20.75 in along the rows. Circles of 1/2, 1 1/4 and 2 in, each
   * with a lap of 1/2 in, end at 3.641593, 11.995574 and 25.061945; 8.754426 in the third, which is
   * 12.566371 round, is 0.696655 of a turn, 250.796°.
   */
  @Test
  void theFirstJoinFallsInTheThirdRing() {
    JoinPlace first = joins(EQUAL_STRIPS.with("row_style", "rings")).get(0);
    assertEquals(3, first.joinRing());
    assertEquals(250.796, first.joinAngle(), .001);
  }

  /**
   * By hand: a lap of 3 in on a circle of 1/2 in, 3.141593 round, makes a ring of 6.141593. A strip
   * mark of 13.5 in is (13.5 − 0.5) ÷ 2.5 = 5.2 in along it, 2.058407 past the start: the lap lies
   * on the first 235.876°.
   */
  @Test
  void aJoinInTheLapLiesPastTheStartAgain() {
    Briefs lapped = EQUAL_STRIPS.with("row_style", "rings").with("ring_lap", 3);
    RowWork work = Plan.of(lapped.brief()).rows().orElseThrow();
    JoinPlace place = JoinPlace.of(1, 13.5, 10_000, lapped.brief(), work.rings());
    assertEquals(1, place.joinRing());
    assertEquals(235.876, place.joinAngle(), .001);
  }

  /** Against commons-math3's integral along the spiral to the stated turn. */
  @Test
  void ringAndAngleLeadBackToTheSewnLength() {
    double slope = .75 / (2 * Math.PI);
    double gap = .5 / slope;
    for (JoinPlace join : joins(EQUAL_STRIPS)) {
      double turned = gap + 2 * Math.PI * (join.joinRing() - 1 + join.joinAngle() / 360);
      double sewn =
          new IterativeLegendreGaussIntegrator(12, 1e-12, 1e-12)
              .integrate(1_000_000, a -> Math.hypot(slope * a, slope), gap, turned);
      assertEquals((join.joinMark() - .5) / 2.5, sewn, 1e-4, join::toString);
    }
  }

  /**
   * By hand: the spiral is 301.7616 long (computed from the exact spiral) and ends after 10.6667
   * turns, at 240°; a closing ring of 8 1/2 in goes on from there for 53.4071. A quarter of it on
   * is 330°, a half 60°.
   */
  @ParameterizedTest
  @CsvSource({"315.1134,330", "328.4651,60"})
  void theClosingRingGoesOnWhereTheSpiralEnds(double stitched, double angle) {
    Briefs closed = EQUAL_STRIPS.with("closing_ring", "yes");
    RowWork work = Plan.of(closed.brief()).rows().orElseThrow();
    JoinPlace place = JoinPlace.of(1, .5 + 2.5 * stitched, 10_000, closed.brief(), work.rings());
    assertEquals(12, place.joinRing());
    assertEquals(angle, place.joinAngle(), .01);
  }

  /** A slanting seam of the last pair may have its middle past the end, which cuts through it. */
  @Test
  void aSeamAcrossTheEndOfTheOnlyCushionLiesAtItsEnd() {
    RowWork work = Plan.of(EQUAL_STRIPS.brief()).rows().orElseThrow();
    double flat = work.strip().flatLength();
    JoinPlace place = JoinPlace.of(1, flat + 2, flat, EQUAL_STRIPS.brief(), work.rings());
    assertEquals(1, place.joinCushion());
    assertEquals(flat, place.joinMark(), 1e-9);
    assertEquals(11, place.joinRing());
  }

  /** The second frill starts where the first ends: marks begin anew, the run goes on. */
  @Test
  void everyFrillOfAnOrderHasItsOwnMarks() {
    Briefs two = EQUAL_STRIPS.with("quantity", 2);
    double flat = Plan.of(two.brief()).rows().orElseThrow().strip().flatLength();
    List<JoinPlace> second = joins(two).stream().filter(j -> j.joinCushion() == 2).toList();
    assertTrue(second.size() > 10, second::toString);
    for (JoinPlace join : second) {
      assertEquals(.625 + 51.75 * join.joinNo() - flat, join.joinMark(), 1e-9, join::toString);
    }
  }

  /** Spares are the longest strips and are left out of the run. */
  @Test
  void sparesMoveNoJoin() {
    assertEquals(joins(EQUAL_STRIPS), joins(EQUAL_STRIPS.with("spare_strips", 2)));
  }

  /**
   * What is tucked in behind the last stitch lies where the last ring ends, whether the lengths of
   * the rings add up to a hair more or less than their sum in binary.
   */
  @ParameterizedTest
  @ValueSource(doubles = {.35, .65, .8, .85, 1.2, 1.3})
  void theTuckedInEndLiesAtTheEndOfTheLastRing(double spacing) {
    Briefs rings = Briefs.inch().with("row_style", "rings").with("ring_spacing", spacing);
    RowWork work = Plan.of(rings.brief()).rows().orElseThrow();
    double end = work.strip().flatLength();
    JoinWorking working = JoinWorking.of(end, rings.brief(), work.rings());
    int last = 1 + (int) Math.floor(8 / spacing + 1e-9);
    assertEquals(last, working.joinTurns(), 1e-6);
    assertEquals(last - 1, working.ringsBefore());
    assertEquals(last, JoinPlace.of(1, end - .25, end, rings.brief(), work.rings()).joinRing());
  }

  @Test
  void theTuckedInStartLiesWhereTheRowsBegin() {
    RowWork work = Plan.of(EQUAL_STRIPS.brief()).rows().orElseThrow();
    assertEquals(0, JoinWorking.of(.25, EQUAL_STRIPS.brief(), work.rings()).joinStitched());
    assertEquals(0, JoinWorking.of(.25, EQUAL_STRIPS.brief(), work.rings()).joinTurns());
  }
}
