package frillbook.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ContrastTest {
  private static final double TENTH = 0.05;

  /**
   * The two ends are the standard's own; #767676 is the lightest grey that is readable on white.
   */
  @Test
  void blackOnWhiteIsTwentyOneAndTheLightestReadableGreyFourAndAHalf() {
    assertEquals(21, Contrast.ratio("000000", "FFFFFF"), 1e-9);
    assertEquals(1, Contrast.ratio("8A5A00", "8A5A00"), 1e-9);
    assertEquals(4.54, Contrast.ratio("767676", "FFFFFF"), 0.005);
  }

  /** Worked out beforehand for the drawings of the pages, to one place. */
  @ParameterizedTest
  @CsvSource({
    "READY,        FFFFFF, 1F6B45, 6.5",
    "LOOK AGAIN,   FFFFFF, 8A5A00, 5.9",
    "STOP,         FFFFFF, 8B1E0F, 9.2",
    "an input,     1F3F7A, FFEFB8, 8.9",
    "its frame,    7A5E12, FFFFFF, 6.1",
    "headings,     17404A, FFFFFF, 11.2",
    "notes,        46525E, FFFFFF, 8.0"
  })
  void aColourStandsOutAsDrawn(String what, String letters, String ground, double ratio) {
    assertEquals(ratio, Contrast.ratio(letters, ground), TENTH, what);
  }
}
