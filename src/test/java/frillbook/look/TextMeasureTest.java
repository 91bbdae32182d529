package frillbook.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import org.junit.jupiter.api.Test;

final class TextMeasureTest {
  /** Widths published for Helvetica (Adobe Font Metrics): a 556, space 278, W 944, i 222. */
  @Test
  void aTextIsAsWideAsItsLetters() {
    assertEquals((556 + 278 + 944 + 222) * 10 / 1000.0, TextMeasure.width("a Wi", 10), 1e-9);
  }

  @Test
  void anEmptyTextTakesOneLine() {
    assertEquals(1, TextMeasure.lines("", 100, 10, false));
  }

  @Test
  void wordsThatDoNotFitGoToTheNextLine() {
    // 11 letters of 5.56 and a space of 2.78 pt; the line has 40 pt.
    assertEquals(2, TextMeasure.lines("aaaaaa aaaaa", 40, 10, false));
  }

  @Test
  void aWordWiderThanTheLineIsBroken() {
    // 20 letters of 5.56 pt are 111.2 pt.
    assertEquals(3, TextMeasure.lines("a".repeat(20), 50, 10, false));
  }

  @Test
  void boldTextIsGivenMoreRoom() {
    assertTrue(
        TextMeasure.height("one two three four five", 106, 10, true)
            > TextMeasure.height("one two three four five", 106, 10, false));
  }

  /** The font's own measure, where a font with these widths is installed. */
  @Test
  void theWidthsAreThoseOfTheInstalledFont() {
    Font font = new Font("Liberation Sans", Font.PLAIN, 100);
    assumeTrue(font.getFamily().equals("Liberation Sans"));
    FontRenderContext exact = new FontRenderContext(null, true, true);
    String text = "From one sewn row to the next, along a radius: 0.75 in (AGAIN!).";
    double measured = font.getStringBounds(text, exact).getWidth();
    assertEquals(measured, TextMeasure.width(text, 100), measured * 0.002);
  }
}
