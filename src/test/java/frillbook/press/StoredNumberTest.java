package frillbook.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class StoredNumberTest {
  private static final MathContext TWELVE = new MathContext(12);

  private static String written(double number) {
    XmlBuffer out = new XmlBuffer();
    StoredNumber.write(out, number);
    return new String(out.bytes(), 0, out.size(), StandardCharsets.US_ASCII);
  }

  /** Rounded by hand. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "18, 18",
    "-18.5, -18.5",
    "0.30000000000000004, 0.3",
    "3.4166666666666665, 3.41666666667",
    "0.05, 0.05",
    "0.00123456789012345, 0.00123456789012",
    "999999999999.7, 1000000000000",
    "99999999999.96, 100000000000",
    "0.09999999999999999, 0.1",
    "123456789012345, 123456789012000",
    "123456789012.5, 123456789013",
    "1e-9, 0.000000001",
    "1e-10, 1E-10",
    "-2.5e-12, -2.5E-12",
    "1e15, 1E+15",
    "1e300, 1E+300"
  })
  void twelveFiguresAreWritten(double number, String expected) {
    assertEquals(expected, written(number));
  }

  /**
   * As the JDK's decimal arithmetic rounds. Where a number lies within a ten-thousandth of a unit
   * of the middle between two, either will do.
   */
  @Test
  void anyNumberIsWrittenAsDecimalArithmeticRoundsIt() {
    Random random = new Random(11);
    for (int trial = 0; trial < 20_000; trial++) {
      double number = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(26) - 10);
      BigDecimal exact = new BigDecimal(number);
      BigDecimal rounded = exact.round(TWELVE);
      BigDecimal off = new BigDecimal(written(number)).subtract(exact).abs();
      BigDecimal half = rounded.ulp().multiply(new BigDecimal("0.5001"));
      assertTrue(off.compareTo(half) <= 0, () -> number + " is written " + written(number));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoNumberIsRefused(double number) {
    assertThrows(NumberFormatException.class, () -> written(number));
  }
}
