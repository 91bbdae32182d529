package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.strip.Join;
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

  private static final Join SQUARE = new Join(false, 1.25, 1);

  /** 200 − 1.25 for a run without spares; two spares of 53 add 2 × 51.75. */
  @Test
  void theRunNeedsOneSeamLessThanItHasStrips() {
    assertEquals(198.75, pieces(200, 0).netNeeded(SQUARE, 53), 1e-12);
    assertEquals(302.25, pieces(200, 2).netNeeded(SQUARE, 53), 1e-12);
  }

  @Test
  void theShortestRunStillNeedsAStrip() {
    assertEquals(.125, pieces(1, 0).netNeeded(SQUARE, 53));
  }

  /** A strip of 1 in is lost in its own seam; it must not make three spares lessen the need. */
  @Test
  void stripsTooShortToJoinDoNotLessenTheNeed() {
    assertEquals(28.75, pieces(30, 3).netNeeded(SQUARE, 1), 1e-12);
  }

  @Test
  void severalCushionsHaveStripsOfTheirOwn() {
    assertEquals(false, PIECES.ownStrips());
    assertEquals(true, new Pieces(2, 120, 2, 0, 12, 99, 2, 10, .125, 3).ownStrips());
  }

  @Test
  void anotherCutWidthChangesNothingElse() {
    Pieces own = new Pieces(2, 120, 2, 1, 12, 99, 2, 10, .125, 3);
    assertEquals(new Pieces(2.5, 120, 2, 1, 12, 99, 2, 10, .125, 3), own.withStripWidth(2.5));
  }

  private static Pieces pieces(double run, int spares) {
    return new Pieces(2.25, run, spares, 12, 0, 13, .125);
  }
}
