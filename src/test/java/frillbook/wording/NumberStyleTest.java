package frillbook.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberStyleTest {
  private static String said(int least, int most, double number) {
    return new NumberStyle(least, most, false, false).say(number, 2);
  }

  /** Halves go away from zero; 2.675 is not halved in binary and is settled first. */
  @ParameterizedTest
  @CsvSource({
    "35.375, 2, 35.38",
    "2.675, 2, 2.68",
    "-2.675, 2, -2.68",
    "20, 2, 20",
    "19.8750000001, 3, 19.875",
    "0.004, 2, 0",
    "-0.004, 2, 0",
    "1200000, 0, 1200000"
  })
  void needlessPlacesAreLeftOut(double number, int most, String said) {
    assertEquals(said, said(0, most, number));
  }

  @ParameterizedTest
  @CsvSource({"12.5, 12.50", "12, 12.00", "12.345, 12.35", "0, 0.00"})
  void placesThatAreAlwaysSaidAreFilledUp(double number, String said) {
    assertEquals(said, said(2, 2, number));
  }

  @ParameterizedTest
  @CsvSource({"0.2, 20%", "0.0725, 7.25%", "0.6666666, 66.667%", "0, 0%"})
  void aShareIsSaidInHundredths(double share, String said) {
    assertEquals(said, new NumberStyle(0, 3, true, false).say(share, 2));
  }

  /** ISO 4217: JPY has no minor unit, EUR two places, KWD three. */
  @ParameterizedTest
  @CsvSource({"0, 83", "2, 82.50", "3, 82.500"})
  void moneyHasThePlacesOfItsCurrency(int places, String said) {
    assertEquals(said, NumberStyle.MONEY.say(82.5, places));
  }

  /** As in the cells of a price: #,##0.00. */
  @ParameterizedTest
  @CsvSource({
    "1482, '1,482.00'",
    "-1482.5, '-1,482.50'",
    "999.995, '1,000.00'",
    "1234567.8, '1,234,567.80'"
  })
  void thousandsOfMoneyStandApart(double sum, String said) {
    assertEquals(said, NumberStyle.MONEY.say(sum, 2));
  }
}
