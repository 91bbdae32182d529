package frillbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
  /** 0.1 + 0.2 is 0.30000000000000004 in binary (IEEE 754). */
  @Test
  void aTenthAndTwoTenthsSettleAsThreeTenths() {
    assertEquals(0.3, Rounding.settle(0.1 + 0.2));
  }

  @Test
  void halfAMillionthSettlesAwayFromZero() {
    assertEquals(0.000001, Rounding.settle(0.0000005));
    assertEquals(-0.000001, Rounding.settle(-0.0000005));
  }

  /** Against {@link BigDecimal}, rounded half up at six places. */
  @Test
  void settledValuesAgreeWithDecimalArithmetic() {
    Random random = new Random(6);
    for (int i = 0; i < 1000; i++) {
      double value = (random.nextDouble() - 0.5) * 20_000;
      double expected = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).doubleValue();
      assertEquals(expected, Rounding.settle(value), 1e-11, () -> "settle " + value);
    }
  }

  /** 1.005, 2.675 and 0.285 are a little less in binary (IEEE 754); a person means the half. */
  @ParameterizedTest
  @CsvSource({
    "2,1.005,1.01",
    "2,2.675,2.68",
    "2,0.285,0.29",
    "2,-1.005,-1.01",
    "1,7.249999999999999,7.3",
    "3,0.0625,0.063",
    "1,0.04,0",
    "0,2.5,3",
    "0,2.4999,2"
  })
  void aHalfOfTheLastPlaceIsRoundedAwayFromZero(int places, double value, double expected) {
    assertEquals(expected, Rounding.toPlaces(places, value));
  }

  /** What rounds to nothing is 0, and no -0, which would be shown with its sign. */
  @Test
  void littleBelowZeroIsZero() {
    assertEquals("0.0", Double.toString(Rounding.toPlaces(2, -0.001)));
  }

  /** Against {@link BigDecimal} on numbers of four decimals, halves among them. */
  @Test
  void placesAgreeWithDecimalArithmetic() {
    Random random = new Random(5);
    for (int i = 0; i < 3000; i++) {
      BigDecimal value = BigDecimal.valueOf(random.nextInt(20_000_001) - 10_000_000L, 4);
      int places = i % 4;
      double expected = value.setScale(places, RoundingMode.HALF_UP).doubleValue() + 0.0;
      assertEquals(expected, Rounding.toPlaces(places, value.doubleValue()), value::toString);
    }
  }

  /**
   * At the rim of a disc the square of half the chord is 0 but for the last bits: 0.3² − 0.3² by
   * way of 0.1 + 0.2 is 3e-17, whose root would be a strip's hair of 6e-9.
   */
  @Test
  void aChordAtTheRimIsNothing() {
    double offset = 0.1 + 0.2;
    double square = offset * offset - 0.3 * 0.3;
    assertNotEquals(0, square);
    assertEquals(0, Rounding.settleSquare(square));
  }

  /** Half a thousandth of a millionth settles up; 6.25 is the square of 2 1/2. */
  @ParameterizedTest
  @CsvSource({
    "6.25,6.25",
    "6.2500000004,6.25",
    "6.2499999996,6.25",
    "6.2500000006,6.250000001",
    "0.0000000005,0.000000001",
    "0.00000000049,0",
    "0,0"
  })
  void squaresSettleAtNinePlaces(double square, double expected) {
    assertEquals(expected, Rounding.settleSquare(square));
  }

  /** 13/16 is half-way between 0.812 and 0.813; the others are it but for the last digits. */
  @ParameterizedTest
  @CsvSource({
    "0.8125,0.813",
    "0.81249999999999,0.813",
    "0.81250000000001,0.813",
    "-0.8125,-0.812",
    "-0.81250000000001,-0.812",
    "0.123456,0.123",
    "-0.9999,-1",
    "0,0"
  })
  void placesHalfWayAreRoundedUp(double place, double expected) {
    assertEquals(expected, Rounding.drawn(place), 1e-15);
  }

  /** Against {@link BigDecimal}, rounded at three places; none of these is half-way. */
  @Test
  void drawnPlacesAgreeWithDecimalArithmetic() {
    Random random = new Random(3);
    for (int i = 0; i < 1000; i++) {
      BigDecimal place = BigDecimal.valueOf(random.nextInt(200_001) - 100_000L, 5);
      BigDecimal beside = place.add(new BigDecimal("0.000001"));
      double expected = beside.setScale(3, RoundingMode.HALF_UP).doubleValue();
      assertEquals(expected, Rounding.drawn(place.doubleValue()), 1e-15, place::toString);
    }
  }

  @ParameterizedTest
  @CsvSource({"8,8", "8.0000000001,8", "7.9999999999,8", "8.1,9", "8.000001,9", "0,0", "-0.5,0"})
  void upGivesTheNextWholeNumberUnlessItIsThereAlready(double quotient, int expected) {
    assertEquals(expected, Rounding.up(quotient));
  }

  @ParameterizedTest
  @CsvSource({"8,8", "8.0000000001,8", "7.9999999999,8", "7.9,7", "7.999999,7", "0,0", "-0.5,-1"})
  void downGivesTheWholeNumberBelowUnlessItIsThereAlready(double quotient, int expected) {
    assertEquals(expected, Rounding.down(quotient));
  }

  /** 3 × 0.1 over 0.1 is 3.0000000000000004, which bare rounding up makes 4. */
  @Test
  void threeTenthsHoldThreeTenthsAndNotFour() {
    double quotient = (0.1 + 0.1 + 0.1) / 0.1;
    assertEquals(4, (int) Math.ceil(quotient));
    assertEquals(3, Rounding.up(quotient));
  }

  /** By hand: 13.54 ÷ 1/8 = 108.32, so 109 eighths; 18 in is four steps of 1/8 yd. */
  @ParameterizedTest
  @CsvSource({"0.125,13.54,13.625", "0.125,13.625,13.625", "4.5,18,18", "4.5,18.01,22.5"})
  void lengthsAreRoundedUpToWholeSteps(double step, double length, double expected) {
    assertEquals(expected, Rounding.upTo(step, length));
  }

  @Test
  void quotientsBeyondWholeNumbersAreRefused() {
    assertThrows(ArithmeticException.class, () -> Rounding.up(3e9));
    assertThrows(ArithmeticException.class, () -> Rounding.down(3e9));
  }
}
