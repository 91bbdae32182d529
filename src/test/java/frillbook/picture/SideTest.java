package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Steps of 4 1/2°, clockwise from the top: 20 are a quarter. */
class SideTest {
  private static final int QUARTER = 20;

  /** Places are drawn to three decimals. */
  private static final double PLACE = 5.1e-4;

  private static Side side(Briefs briefs) {
    return Drawn.of(briefs).orElseThrow().side();
  }

  private static Briefs foam() {
    return Briefs.inch().with("filling", "foam_disc").with("foam_thickness", 3);
  }

  private static double body(Side side, int step) {
    return side.sides().get(step).sideBody();
  }

  private static double frill(Side side, int row, int step) {
    return side.sides().get(step).frills().get(row - 1).out();
  }

  /** How far across the body reaches at {@code step}, and how far upwards. */
  private static double across(Side side, int step) {
    return body(side, step) * Math.sin(Math.toRadians(4.5 * step));
  }

  private static double upwards(Side side, int step) {
    return body(side, step) * Math.cos(Math.toRadians(4.5 * step));
  }

  @Test
  void theSidesGoOnceRound() {
    assertEquals(4 * QUARTER, side(Briefs.inch()).sides().size());
  }

  /** (x/w)² + (z/t)² = 1 all the way round; places are drawn to .0005, a hair of t. */
  @Test
  void theOutlineIsAnEllipse() {
    Side side = side(Briefs.inch());
    double wide = side.shape().sideWide();
    double thick = side.shape().sideThick();
    for (int step = 0; step < 80; step++) {
      assertEquals(1, Math.hypot(across(side, step) / wide, upwards(side, step) / thick), 5e-3);
    }
  }

  /**
   * The fourth powers of the shares add up to 1: upright at the edge, flat on top. By hand: 18 in
   * less 3 in of foam are 15 in across; the outer ring lies on its edge, and 2 in of frill make it
   * 9 1/2 in to either side.
   */
  @Test
  void aFoamDiscHasABlunterEdge() {
    Side side = side(foam());
    assertEquals(7.5 / 9.5, side.shape().sideWide(), 1e-12);
    assertEquals(1.5 / 9.5, side.shape().sideThick(), 1e-12);
    for (int step = 0; step < 80; step++) {
      double across = Math.pow(across(side, step) / side.shape().sideWide(), 4);
      double upwards = Math.pow(upwards(side, step) / side.shape().sideThick(), 4);
      assertEquals(1, across + upwards, 1.6e-2);
    }
  }

  /** A slab 15 × 3 in: at 45° a disc of foam is as thick as anywhere but for its rounded edge. */
  @Test
  void aFoamDiscIsFlatOnTop() {
    Side side = side(foam());
    for (int step = 0; step <= QUARTER / 2; step++) {
      assertEquals(1.5 / 9.5, upwards(side, step), 1.1e-3);
    }
  }

  /**
   * By hand, to the limit: 18 in flat is .7627598 × 18 = 13.7297 in across and .9138932 × 9 =
   * 8.2250 in thick (published constants of the Mylar balloon). With 2 in of frill it is 17.7297 in
   * wide, which fills the picture, and reaches 4.1125 + 2 = 6.1125 in above the edge seam. Places
   * are drawn to .0005 of 8.8648 in.
   */
  @Test
  void everyExtentIsToScale() {
    Side side = side(Briefs.inch().with("fill_fraction", 1));
    double inches = side.shape().sideScale();
    assertEquals(17.7297 / 2, inches, 1e-4);
    assertEquals(13.7297 / 2, body(side, QUARTER) * inches, 4.6e-3);
    assertEquals(13.7297 / 2, body(side, 3 * QUARTER) * inches, 4.6e-3);
    assertEquals(8.2250 / 2, body(side, 0) * inches, 4.6e-3);
    assertEquals(8.2250 / 2, body(side, 2 * QUARTER) * inches, 4.6e-3);
    assertEquals(17.7297 / 2, frill(side, 1, QUARTER) * inches, 4.6e-3);
    assertEquals(17.7297 / 2, frill(side, 1, 3 * QUARTER) * inches, 4.6e-3);
    assertEquals(6.1125, frill(side, 1, 0) * inches, 4.6e-3);
  }

  /** A small cushion under a high frill is higher than wide: 1 is at its top. */
  @Test
  void aHighFrillStaysInThePicture() {
    Briefs high = Briefs.inch().with("diameter", 6).with("fullness", 1.2).with("frill_height", 4);
    Side side = side(high);
    assertEquals(1, side.shape().sideRise(), 1e-12);
    assertTrue(side.shape().sideSpread() < 1);
  }

  /**
   * By hand, 18 in to the limit at fullness 2: half of the frill is missing in a hollow. Straight
   * up stand a tip of the first row, 2 in, a hollow of the second, 3/4 × 1 in, and a tip of the
   * third, 1/2 × 2 in.
   */
  @Test
  void hollowsAreAsDeepAsTheFrillIsFull() {
    Side side = side(Briefs.inch().with("fill_fraction", 1).with("fullness", 2));
    double[] frill = {2, .75, 1};
    for (int row = 1; row <= 3; row++) {
      double over = frill(side, row, 0) - body(side, 0);
      assertEquals(frill[row - 1], over * side.shape().sideScale(), 9.2e-3);
    }
  }

  /**
   * Tips of the first row are the farthest points about them. Of twenty petals all round ten go to
   * the upper half: two halves at its ends, and nine between them.
   */
  @Test
  void thePetalsOfTheFrillAreSeen() {
    Side side = side(Briefs.inch().with("fullness", 3));
    long tips =
        IntStream.rangeClosed(-QUARTER + 1, QUARTER - 1)
            .filter(step -> gap(side, step) > gap(side, step - 1))
            .filter(step -> gap(side, step) >= gap(side, step + 1))
            .count();
    assertEquals(9, tips);
  }

  /** What the first row stands over the body; steps to the left of the top count below 0. */
  private static double gap(Side side, int step) {
    int from = Math.floorMod(step, 80);
    return frill(side, 1, from) - body(side, from);
  }

  @Test
  void everythingStaysInThePicture() {
    for (Drawn one : Drawn.sample(SampleBriefs.layouts(60), 20250402)) {
      for (int step = 0; step < 80; step++) {
        double body = body(one.side(), step);
        assertTrue(body > 0 && body <= 1, one.what());
        for (int row = 1; row <= 3; row++) {
          double out = frill(one.side(), row, step);
          assertTrue(out >= body - 1e-9 && out <= 1 + 1e-9, one.what());
        }
      }
    }
  }

  /** The frill is sewn on top: below the edge nothing stands out. */
  @Test
  void theFrillStandsOnTop() {
    Side side = side(Briefs.inch());
    for (int step = QUARTER + 1; step < 3 * QUARTER; step++) {
      for (int row = 1; row <= 3; row++) {
        assertEquals(body(side, step), frill(side, row, step));
      }
    }
  }

  @Test
  void theLeftHalfMirrorsTheRight() {
    List<Side.SideStep> sides = side(Briefs.inch()).sides();
    for (int step = 1; step < 40; step++) {
      assertEquals(sides.get(step).sideBody(), sides.get(80 - step).sideBody(), 2 * PLACE);
      for (int row = 0; row < 3; row++) {
        double right = sides.get(step).frills().get(row).out();
        assertEquals(right, sides.get(80 - step).frills().get(row).out(), 2 * PLACE);
      }
    }
  }

  /**
   * Petals stand closer together at the edge than on top. By hand, 18 in to the limit at fullness
   * 2, at 22 1/2°: √(6.1125 ÷ 8.8648) × tan 22.5° is the tangent of 18.981°, of which twenty are a
   * turn and 19.62°, cosine .94195. So .98549 are left of the frill, which stands there between the
   * body at .48736 and the tips at .71764.
   */
  @Test
  void petalsStandCloserAtTheEdge() {
    Side side = side(Briefs.inch().with("fill_fraction", 1).with("fullness", 2));
    assertEquals(.48736, body(side, 5), 2 * PLACE);
    assertEquals(.71430, frill(side, 1, 5), 2 * PLACE);
  }
}
