package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A run of 120 in from strips 2 in wide, and two discs of 10 in. */
class PiecesTest {
  private static final Pieces PIECES = new Pieces(2, 120, 0, 12, 2, 10, .125);

  /** By hand: 120 × 2 = 240, and two discs of 25π. */
  @Test
  void theAreaIsThatOfTheRunAndOfTheDiscs() {
    assertEquals(240 + 50 * Math.PI, PIECES.area(1), 1e-9);
  }

  /** By hand: 96 in stretch to 120, and 96 × 2 = 192. */
  @Test
  void stripsThatStretchAreCutShorter() {
    assertEquals(192 + 50 * Math.PI, PIECES.area(1.25), 1e-9);
  }

  @Test
  void theRadiusIsHalfTheDiameter() {
    assertEquals(5, PIECES.discRadius());
  }
}
