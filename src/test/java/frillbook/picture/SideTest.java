package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import java.util.List;
import org.junit.jupiter.api.Test;

class SideTest {
  private static Side side(Briefs briefs) {
    return Drawn.of(briefs).orElseThrow().side();
  }

  /** (x/w)² + (z/t)² = 1 all the way round; places are drawn to .0005, a hair of t. */
  @Test
  void theOutlineIsAnEllipse() {
    Side side = side(Briefs.inch());
    for (var point : side.sides()) {
      double across = point.sideX() / side.sideWide();
      double up = point.sideZ() / side.sideThick();
      assertEquals(1, Math.hypot(across, up), 5e-3);
    }
  }

  /** The fourth powers of the shares add up to 1: upright at the edge, flat on top. */
  @Test
  void aFoamDiscHasABlunterEdge() {
    Side side = side(Briefs.inch().with("filling", "foam_disc").with("foam_thickness", 3));
    assertEquals(15 / 22.0, side.sideWide(), 1e-12);
    assertEquals(3 / 22.0, side.sideThick(), 1e-12);
    for (var point : side.sides()) {
      double across = Math.pow(point.sideX() / side.sideWide(), 4);
      assertEquals(1, across + Math.pow(point.sideZ() / side.sideThick(), 4), 1.6e-2);
    }
  }

  /**
   * Places are drawn to three decimals, in a picture 11 in to either side: .0056 in. By hand, to
   * the limit: 18 in flat is .7627598 × 18 = 13.7297 in across and .9138932 × 9 = 8.2250 in thick
   * (published constants of the Mylar balloon).
   */
  @Test
  void theFilledOutlineIsToScale() {
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
      for (var point : one.side().sideFrills()) {
        assertTrue(Math.abs(point.sideFrillX()) <= 1 + 1e-3, one.what());
        assertTrue(point.sideFrillZ() <= 1 + 1e-3 && point.sideFrillZ() >= 0, one.what());
      }
      for (var point : one.side().sides()) {
        assertTrue(point.sideZ() >= -.5, one.what());
      }
    }
  }

  /** 18 in across and 2 in of frill on either side: 22 in are 2. */
  @Test
  void theFlatCushionIsALineAcross() {
    List<Side.SideFlatPoint> flats = side(Briefs.inch()).sideFlats();
    assertEquals(22, side(Briefs.inch()).sideScale());
    assertEquals(18 / 22.0, side(Briefs.inch()).sideFlat(), 1e-12);
    double[][] corners = {{.818, .01}, {-.818, .01}, {-.818, -.01}, {.818, -.01}, {.818, .01}};
    for (int i = 0; i < 5; i++) {
      assertEquals(corners[i][0], flats.get(i).sideFlatX(), 1e-9);
      assertEquals(corners[i][1], flats.get(i).sideFlatZ(), 1e-9);
    }
  }

  /** The frill begins and ends on the outline's own ends. */
  @Test
  void theFrillGrowsOutOfTheEdge() {
    Side side = side(Briefs.inch());
    assertEquals(25, side.sideFrills().size());
    assertEquals(0, side.sideFrills().get(0).sideFrillZ(), 1e-12);
    assertEquals(0, side.sideFrills().get(24).sideFrillZ(), 1e-12);
    assertEquals(side.sideWide(), side.sideFrills().get(0).sideFrillX(), 5.1e-4);
    assertEquals(-side.sideWide(), side.sideFrills().get(24).sideFrillX(), 5.1e-4);
    assertEquals(0, side.sideFrills().get(12).sideFrillX(), 5.1e-4);
  }

  /** Every point of the outline is as far out as its angle says, a twelfth of a quarter each. */
  @Test
  void theOutlineGoesOnceRound() {
    Side side = side(Briefs.inch());
    assertEquals(Math.PI / 24, side.sideStep(), 1e-12);
    for (int i = 0; i <= 48; i++) {
      double out = side.sideWide() * Math.cos(Math.PI * i / 24);
      assertEquals(out, side.sides().get(i).sideX(), 5.1e-4);
    }
  }

  /** Places are drawn to three decimals, halves upwards. */
  @Test
  void theLowerHalfMirrorsTheUpper() {
    List<Side.SidePoint> outline = side(Briefs.inch()).sides();
    for (int i = 1; i < 24; i++) {
      assertTrue(outline.get(i).sideZ() > 0);
      assertEquals(-outline.get(i).sideZ(), outline.get(48 - i).sideZ(), 1.1e-3);
    }
  }
}
