package frillbook.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
  private static final Money CENTS = new Money(2);

  /**
   * Streamlined Sales and Use Tax Agreement §324: to the third decimal, up when that is over four.
   */
  @ParameterizedTest
  @CsvSource({"1.234,1.23", "1.235,1.24", ".6849,.68"})
  void taxIsRoundedAsTheAgreementSays(double amount, double rounded) {
    assertEquals(rounded, CENTS.round(amount));
  }

  /** 1.005 is 1.00499999999999989 in binary (IEEE 754); a person means the half. */
  @ParameterizedTest
  @CsvSource({"1.005,1.01", "2.675,2.68", "0,0", "0.004,0"})
  void aHalfIsAHalfHoweverItIsHeld(double amount, double rounded) {
    assertEquals(rounded, CENTS.round(amount));
  }

  /** 3 × 0.1 is 0.30000000000000004 in binary (IEEE 754). */
  @ParameterizedTest
  @CsvSource({"1.231,1.24", "1.23,1.23", "0.30000000000000004,0.3", "0,0"})
  void roundingUpAsksForNoMoreThanTheNextCent(double amount, double rounded) {
    assertEquals(rounded, CENTS.roundUp(amount));
  }

  /** By hand: a half of the smallest coin goes up, less does not, in every kind of currency. */
  @ParameterizedTest
  @CsvSource({
    "0,0.07,0",
    "0,1.005,1",
    "0,2.675,3",
    "0,0.285,0",
    "0,0.5,1",
    "0,2.5,3",
    "2,0.07,0.07",
    "2,1.005,1.01",
    "2,2.675,2.68",
    "2,0.285,0.29",
    "3,0.07,0.07",
    "3,1.005,1.005",
    "3,2.675,2.675",
    "3,0.285,0.285",
    "3,0.0285,0.029"
  })
  void roundingFollowsTheSmallestCoin(int places, double amount, double rounded) {
    assertEquals(rounded, new Money(places).round(amount));
  }

  /** 0.07 × 100 is 7.000000000000001 in binary (IEEE 754), which bare rounding up makes 8. */
  @ParameterizedTest
  @ValueSource(ints = {0, 2, 3})
  void aWholeNumberOfCoinsIsNotRoundedUp(int places) {
    Money money = new Money(places);
    for (int coins = 0; coins < 20_000; coins++) {
      double amount = BigDecimal.valueOf(coins, places).doubleValue();
      assertEquals(amount, money.roundUp(amount));
      assertEquals(amount, money.round(amount));
    }
    assertEquals(8, Math.ceil(0.07 * 100));
  }

  /** By hand: settled at four decimals of the smallest coin, so a ten-thousandth of it counts. */
  @ParameterizedTest
  @CsvSource({"0,1.0001,2", "0,1.00004,1", "2,1.000001,1.01", "2,1.0000004,1", "3,1.0000001,1.001"})
  void aTenThousandthOfACoinIsTheLeastThatIsRoundedUp(int places, double amount, double rounded) {
    assertEquals(rounded, new Money(places).roundUp(amount));
  }

  /** By hand: what is taken away is no -0.00. */
  @Test
  void sumsAreWholeCoinsWithoutDust() {
    assertEquals(0.3, CENTS.sum(0.1, 0.2));
    assertEquals(0.0, CENTS.sum(0.3, -0.1, -0.2));
    assertEquals(-1.01, CENTS.sum(0.99, -2));
  }

  /** ISO 4217. */
  @ParameterizedTest
  @CsvSource({"JPY,0", "USD,2", "EUR,2", "GBP,2", "KWD,3", "BHD,3", "TND,3", "CLF,4"})
  void theMinorUnitIsTheCurrencys(String code, int places) {
    assertEquals(places, Money.in(code).places());
  }

  @Test
  void aCurrencyWithoutAMinorUnitIsRefused() {
    var refusal = assertThrows(IllegalArgumentException.class, () -> Money.in("XAU"));
    assertEquals("XAU has no coins to round to; name one such as EUR", refusal.getMessage());
  }

  /** By hand: all places are said, and a half of the last goes up. */
  @ParameterizedTest
  @CsvSource({"0,57.5,58", "2,82.5,82.50", "2,1.005,1.01", "3,0,0.000"})
  void aSumIsSaidWithAllPlaces(int places, double amount, String said) {
    assertEquals(said, new Money(places).say(amount));
  }

  /** By hand: 61.27 by halves is 61.50, by fives 65; without a step the next cent. */
  @ParameterizedTest
  @CsvSource({"0.5,61.27,61.5", "5,61.27,65", "5,65,65", "0,61.271,61.28", "5,0,0"})
  void pricesAreTidiedUpwards(double step, double amount, double tidied) {
    assertEquals(tidied, CENTS.tidy(step, amount));
  }

  /**
   * By hand: 1200 × 888541.44 is 1066249728.000. The step is a ten-millionth more, as a sum worked
   * out in binary fractions may be.
   */
  @Test
  void aThousandLargeStepsComeToNoCoinMore() {
    assertEquals(1_066_249_728, new Money(3).tidy(888541.4400000001, 1_066_249_000));
  }

  /**
   * By hand: quarters of a yen make 100.25, which nobody can pay; 101 is the next that covers it.
   */
  @Test
  void aStepFinerThanTheMinorUnitNeverLowersAPrice() {
    assertEquals(101, new Money(0).tidy(.25, 100.1));
  }
}
