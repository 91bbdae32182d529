package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

class SideTest {
  private static Side side(Briefs briefs) {
    return Drawn.of(briefs).orElseThrow().set().side();
  }

  /** commons-math3: the height lost along dz/dx = −x²/√(1 − x⁴) between 0 and x = sin θ. */
  @Test
  void theOutlineIsTheBalloons() {
    var integrator = new IterativeLegendreGaussIntegrator(24, 1e-12, 1e-12);
    for (var point : side(Briefs.inch()).balloons().subList(1, 13)) {
      double drop =
          integrator.integrate(
              1_000_000,
              t -> Math.pow(Math.sin(t), 2) / Math.sqrt(1 + Math.pow(Math.sin(t), 2)),
              0,
              point.balloonAngle());
      assertEquals(drop, point.balloonDrop(), 1e-3);
    }
  }

  /** M = ∫t²/√(1 − t⁴)dt over 0 to 1 = 0.599070117368, the second lemniscate constant. */
  @Test
  void itsHeightIsTheLemniscateConstant() {
    assertEquals(.599070117368, side(Briefs.inch()).balloonDepth(), 1e-9);
  }

  /**
   * Places are drawn to three decimals, in a picture 11 in to either side: .0056 in. By hand, to
   * the limit: 18 in flat is .7627598 × 18 = 13.7297 in across and .9138932 × 9 = 8.2250 in thick
   * (published constants of the Mylar balloon).
   */
  @Test
  void theStuffedOutlineIsToScale() {
    Side side = side(Briefs.inch().with("fill_fraction", 1));
    double inches = side.sideScale() / 2;
    assertEquals(13.7297 / 2, side.sides().get(0).sideX() * inches, 5.7e-3);
    assertEquals(-13.7297 / 2, side.sides().get(24).sideX() * inches, 5.7e-3);
    assertEquals(8.2250 / 2, side.sides().get(12).sideZ() * inches, 5.7e-3);
    assertEquals(-8.2250 / 2, side.sides().get(36).sideZ() * inches, 5.7e-3);
    assertEquals(9, side.sideFlats().get(0).sideFlatX() * inches, 5.7e-3);
  }

  @Test
  void theOutlineCloses() {
    Side side = side(Briefs.inch());
    assertEquals(side.sides().get(0).sideX(), side.sides().get(48).sideX(), 1e-12);
    assertEquals(0, side.sides().get(0).sideZ(), 1e-12);
    assertEquals(0, side.sides().get(48).sideZ(), 1e-12);
  }

  /** Tips stand 2 in above the outline, hollows 1.6 in. */
  @Test
  void theFrillStandsOnTop() {
    Side side = side(Briefs.inch());
    double inches = side.sideScale() / 2;
    for (int i = 1; i < 24; i++) {
      double over = side.sideFrills().get(i).sideFrillZ() - side.sides().get(i).sideZ();
      assertEquals(i % 2 == 1 ? 2 : 1.6, over * inches, 1.2e-2);
    }
  }

  @Test
  void everythingStaysInThePicture() {
    for (Drawn one : Drawn.sample(SampleBriefs.layouts(60), 20250402)) {
      for (var point : one.set().side().sideFrills()) {
        assertTrue(Math.abs(point.sideFrillX()) <= 1 + 1e-3, one.what());
        assertTrue(point.sideFrillZ() <= 1 + 1e-3 && point.sideFrillZ() >= 0, one.what());
      }
      for (var point : one.set().side().sides()) {
        assertTrue(point.sideZ() >= -.5, one.what());
      }
    }
  }
}
