package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bands of discs that are longer than the fabric leave full strips of less than nothing. */
class NoFullStripTest {
  private static final Pieces PIECES = new Pieces(2, 100, 0, 12, 1, 10, .125);

  private static final CushionStrips NONE = CushionStrips.of(PIECES, new Join(false, 1, 1), -5);

  @Test
  void theLastStripIsAboveNothingAllTheSame() {
    assertTrue(NONE.last() > 0, () -> "last " + NONE.last());
    assertEquals(1, NONE.inFull());
  }

  @Test
  void aPieceOfLessThanNothingDoesNotServe() {
    assertEquals(0, NONE.serving(List.of(new OddPiece(-3, 0))));
  }
}
