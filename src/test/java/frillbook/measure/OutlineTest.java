package frillbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class OutlineTest {
  /** Archimedes, Measurement of a Circle: between 3 10/71 and 3 1/7 times the width. */
  @Test
  void aroundACircleIsBetweenTheBoundsOfArchimedes() {
    double around = Outline.around(497);
    assertEquals(true, 1561 < around && around < 1562, around + " round 497");
  }

  /**
   * The same book: the area is that of a triangle as high as the radius and as long as the way
   * round.
   */
  @Test
  void areaIsThatOfATriangleOnTheWayRound() {
    assertEquals(18.0 / 4 * Outline.around(18), Outline.area(18), 1e-9);
  }

  /** π × 10 and π × 25, to the digits of a table of π. */
  @Test
  void tenAcross() {
    assertEquals(31.415926535898, Outline.around(10), 1e-11);
    assertEquals(78.539816339745, Outline.area(10), 1e-11);
  }
}
