package frillbook.press;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Numbers as a file stores them: with twelve figures. Of the longest run they still leave less than
 * what counts as equal; all seventeen would only make the file larger.
 */
final class StoredNumber {
  private static final int FIGURES = 12;

  private static final MathContext ROUNDED = new MathContext(FIGURES);

  /** Between these a number is written without an exponent, and by the quick way. */
  private static final double SMALLEST = 1e-9;

  private static final double LARGEST = 1e15;

  /** Powers of ten that a double holds exactly. */
  private static final double[] TENS = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22
  };

  private StoredNumber() {}

  /**
   * Writes {@code number}, half a unit of its twelfth figure rounded away from zero.
   *
   * @throws NumberFormatException when it is not finite
   */
  static void write(XmlBuffer out, double number) {
    double size = Math.abs(number);
    if (size == 0) {
      out.markup("0");
    } else if (size >= SMALLEST && size < LARGEST) {
      if (number < 0) {
        out.markup("-");
      }
      write(out, size, order(size));
    } else {
      out.markup(new BigDecimal(number).round(ROUNDED).stripTrailingZeros().toString());
    }
  }

  /** The power of ten of its first figure, or the one above. */
  private static int order(double size) {
    // Of a binary figure there are 0.30103 decimal ones.
    return (int) Math.floor((Math.getExponent(size) + 1) * 0.30103);
  }

  private static void write(XmlBuffer out, double size, int order) {
    long figures = scaled(size, FIGURES - 1 - order);
    if (figures < (long) TENS[FIGURES - 1]) {
      write(out, size, order - 1);
    } else {
      write(out, figures, FIGURES - 1 - order);
    }
  }

  private static long scaled(double size, int places) {
    return Math.round(places >= 0 ? size * TENS[places] : size / TENS[-places]);
  }

  /** {@code figures} with the point {@code places} from their end. */
  private static void write(XmlBuffer out, long figures, int places) {
    if (places <= 0) {
      out.digits(figures * (long) TENS[-places]);
      return;
    }
    long whole = places > FIGURES ? 0 : figures / (long) TENS[places];
    out.digits(whole);
    fraction(out, places > FIGURES ? figures : figures % (long) TENS[places], places);
  }

  /** The places behind the point; nothing where they are all 0. */
  private static void fraction(XmlBuffer out, long parts, int places) {
    if (parts == 0) {
      return;
    }
    long bare = parts;
    int left = places;
    for (; bare % 10 == 0; bare /= 10) {
      left--;
    }
    out.markup(".");
    for (int zeros = left - 1; zeros > 0 && bare < TENS[zeros]; zeros--) {
      out.markup("0");
    }
    out.digits(bare);
  }
}
