package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.SharedSample;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlowerTest {
  /** Angles and radii are settled to four decimals. */
  private static final double TRACED = 1e-4;

  /** Places are drawn to three decimals. */
  private static final double PLACE = 5.1e-4;

  private static final int BRIEFS = SampleBriefs.layouts(60);

  private static final SharedSample<List<Drawn>> SHARED =
      new SharedSample<>(() -> Drawn.sample(BRIEFS, 20250401));

  private List<Drawn> sample;

  @BeforeEach
  void drawTheSample() {
    sample = SHARED.get();
    assertTrue(sample.size() > BRIEFS, () -> "too few plans: " + sample.size());
  }

  private static Flower flower(Briefs briefs) {
    return Drawn.of(briefs).orElseThrow().flower();
  }

  private record Extent(double least, double most) {
    static <T> Extent of(List<T> points, ToDoubleFunction<T> place) {
      var all = points.stream().mapToDouble(place).summaryStatistics();
      return new Extent(all.getMin(), all.getMax());
    }

    Extent with(Extent other) {
      return new Extent(Math.min(least, other.least), Math.max(most, other.most));
    }

    double size() {
      return most - least;
    }
  }

  private static Extent across(Flower flower) {
    return Extent.of(flower.flower(), FlowerPoint::flowerX)
        .with(Extent.of(flower.flowerRims(), RimPoint::flowerRimX))
        .with(Extent.of(flower.flowerEdges(), EdgePoint::flowerEdgeX));
  }

  private static Extent upward(Flower flower) {
    return Extent.of(flower.flower(), FlowerPoint::flowerY)
        .with(Extent.of(flower.flowerRims(), RimPoint::flowerRimY))
        .with(Extent.of(flower.flowerEdges(), EdgePoint::flowerEdgeY));
  }

  @Test
  void everyFlowerIsAsWideAsHighAndFillsThePicture() {
    for (Drawn one : sample) {
      Extent wide = across(one.flower());
      Extent high = upward(one.flower());
      assertEquals(1, wide.size() / high.size(), .03, one.what());
      assertEquals(1, wide.most(), PLACE, one.what());
      assertTrue(wide.least() >= -1 - PLACE && high.least() >= -1 - PLACE, one.what());
      assertTrue(high.most() <= 1 + PLACE, one.what());
    }
  }

  /** The ripple of amplitude and wavelength as drawn, integrated along its base line. */
  @Test
  void theDrawnRippleIsAsLongAsTheFrillIsFull() {
    for (Drawn one : sample) {
      FlowerShape flower = one.flower().shape();
      double length = flower.flowerRun() / flower.flowerWaves();
      double slope = 2 * Math.PI * flower.flowerSwing() / length;
      double arc =
          new IterativeLegendreGaussIntegrator(24, 1e-12, 1e-12)
              .integrate(
                  1_000_000, x -> Math.sqrt(1 + Math.pow(slope * Math.cos(x), 2)), 0, Math.PI / 2);
      double fullness = one.briefs().brief().frill().fullness();
      assertEquals(fullness, arc / (Math.PI / 2), 2e-6, one.what());
    }
  }

  /** Area rule: a spiral between radii h and 1, rows s apart, is π(1 − h²)/s long. */
  @Test
  void theDrawnRowsAreAsLongAsTheirAreaSays() {
    for (Drawn one : sample) {
      FlowerShape flower = one.flower().shape();
      double hole = flower.flowerHole();
      double byArea = Math.PI * (1 - hole * hole) / flower.flowerSpacing();
      double drawn = flower.flowerRun() * flower.flowerSpacing();
      assertEquals(byArea, drawn, 1e-9 * byArea, one.what());
    }
  }

  /** Rows evenly apart pass π(r² − h²) from h to r in a length in proportion to it. */
  @Test
  void equalStepsPassEqualAreas() {
    for (Drawn one : sample) {
      FlowerShape shape = one.flower().shape();
      double hole = shape.flowerHole();
      for (int step = 0; step <= shape.flowerPoints(); step++) {
        double turns = one.flower().flower().get(step).flowerAngle() / (2 * Math.PI);
        double reached = hole + shape.flowerSpacing() * turns;
        double share = (reached * reached - hole * hole) / (1 - hole * hole);
        assertEquals((double) step / shape.flowerPoints(), share, TRACED, one.what());
      }
    }
  }

  @Test
  void everyRippleHasItsCrestAndItsHollow() {
    for (Drawn one : sample) {
      FlowerShape shape = one.flower().shape();
      assertEquals(0, shape.flowerPoints() % (4 * shape.flowerWaves()), one.what());
      assertTrue(shape.flowerPoints() < one.flower().flower().size(), one.what());
      assertTrue(shape.flowerPoints() > 0, one.what());
    }
  }

  /** By hand: rows from 0.5 to 8.5 in, 2 in apart, are four turns, each 2 in out of 8.5. */
  @Test
  void fewRowsAreDrawnAsTheyAreSewn() {
    Flower flower = flower(Briefs.inch().with("ring_spacing", 2).with("fullness", 1));
    assertEquals(4, flower.shape().flowerTurns(), 1e-12);
    assertFalse(flower.shape().flowerThinned());
    FlowerPoint last = flower.flower().get(Flower.STEPS);
    assertEquals(8 * Math.PI, last.flowerAngle(), TRACED);
    double scale = flower.shape().flowerScale();
    assertEquals(scale, last.flowerRadius(), TRACED);
    assertEquals(.5 / 8.5 * scale, flower.flower().get(0).flowerRadius(), TRACED);
    for (FlowerPoint point : flower.flower()) {
      double inches = .5 + 2 * point.flowerAngle() / (2 * Math.PI);
      assertEquals(inches / 8.5 * scale, point.flowerRadius(), TRACED);
    }
  }

  /** By hand: rows from 0.5 to 8.5 in, 1/4 in apart, are 32 turns. */
  @Test
  void manyRowsAreThinnedAndTheTitleSaysSo() {
    Drawn drawn =
        Drawn.of(Briefs.inch().with("ring_spacing", .25).with("stitch_inset", .125)).orElseThrow();
    assertTrue(drawn.flower().shape().flowerThinned());
    assertEquals(
        "32 turns at 2.5 × fullness: ripples about 1.11 times as deep as long; 5 are drawn",
        drawn.title("flower"));
  }

  /** By hand: the base's radius is 9 in, the rows' 8.5. */
  @Test
  void theBaseIsToScaleWithTheRows() {
    assertEquals(9 / 8.5, flower(Briefs.inch()).shape().flowerEdge(), 1e-12);
  }

  @Test
  void separateRingsStayOnTheirRadius() {
    Flower flower =
        flower(
            Briefs.inch()
                .with("row_style", "rings")
                .with("ring_spacing", 2)
                .with("centre_gap", 1)
                .with("fullness", 1));
    assertEquals(4, flower.shape().flowerTurns());
    double scale = flower.shape().flowerScale() / 8;
    for (FlowerPoint point : flower.flower()) {
      double ring = point.flowerRadius() / scale;
      assertEquals(1, Math.abs(ring % 2), 1e-9, () -> "a ring at 1, 3, 5 or 7 in, not " + ring);
    }
  }

  /**
   * By hand: at fullness 2 the ripple is .413895 as high as long (computed from the elliptic
   * integral), a 24th of the rim 2π × .413895 ÷ 24 = .108358 of its radius; the tips touch the
   * picture's edge, 1 ÷ 1.108358 = .902236 is the middle and .804471 the hollows.
   */
  @ParameterizedTest
  @CsvSource({"0,1", "1,.902236", "2,.804471", "3,.902236", "4,1", "46,.804471", "96,1"})
  void theFreeEdgeHasTwentyFourTips(int point, double radius) {
    RimPoint at = flower(Briefs.inch().with("fullness", 2)).flowerRims().get(point);
    double angle = 2 * Math.PI * point / 96;
    assertEquals(radius * Math.cos(angle), at.flowerRimX(), PLACE);
    assertEquals(radius * Math.sin(angle), at.flowerRimY(), PLACE);
  }

  /**
   * By hand: from 1/2 to 8 1/2 in, five rows are drawn 1.6 in apart. At fullness 2 the tips of the
   * free edge, one row beyond 8 1/2, are 1.108358 × 10.1 in out; the base is 9.
   */
  @Test
  void theEdgeOfTheBaseIsRound() {
    Flower flower = flower(Briefs.inch().with("fullness", 2).with("ring_spacing", .5));
    double radius = 9 / (1.108358 * 10.1);
    assertEquals(33, flower.flowerEdges().size());
    for (int i = 0; i <= 32; i++) {
      EdgePoint at = flower.flowerEdges().get(i);
      assertEquals(radius * Math.cos(2 * Math.PI * i / 32), at.flowerEdgeX(), PLACE);
      assertEquals(radius * Math.sin(2 * Math.PI * i / 32), at.flowerEdgeY(), PLACE);
    }
  }

  /** On the row, at a crest, on the row, in a trough; every point is as far out as it says. */
  @Test
  void theRipplesSwingToEitherSideOfTheRows() {
    Flower flower = flower(Briefs.inch().with("fullness", 2));
    FlowerShape shape = flower.shape();
    double swing = shape.flowerScale() * shape.flowerSpacing() * shape.flowerSwing();
    double[] sway = {0, swing, 0, -swing};
    for (int step = 0; step <= shape.flowerPoints(); step++) {
      FlowerPoint at = flower.flower().get(step);
      double turns = at.flowerAngle() / (2 * Math.PI);
      double row = shape.flowerScale() * (shape.flowerHole() + turns * shape.flowerSpacing());
      assertEquals(row + sway[step % 4], at.flowerRadius(), 2 * TRACED);
      assertEquals(at.flowerRadius() * Math.cos(at.flowerAngle()), at.flowerX(), PLACE);
      assertEquals(at.flowerRadius() * Math.sin(at.flowerAngle()), at.flowerY(), PLACE);
    }
  }
}
