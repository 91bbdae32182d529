package frillbook.money;

import frillbook.measure.Currencies;
import frillbook.measure.Rounding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;

/**
 * The one place where an amount of money is rounded, to the minor unit of its currency.
 *
 * <p>An amount is counted in coins and settled at four decimals of the smallest coin first, so that
 * 1.005 is a half however a program holds it, and 0.07 never seven cents and a bit. Below 0 amounts
 * round away from zero, as in a workbook.
 *
 * @param places decimals of the currency, 0 to 4 (ISO 4217): JPY 0, EUR 2, KWD 3
 */
public record Money(int places) {

  /**
   * The rounding of the currency with this ISO 4217 code.
   *
   * @throws IllegalArgumentException for one without a minor unit, as gold (XAU) or none (XXX)
   */
  public static Money in(String code) {
    return new Money(Currencies.places(code));
  }

  /** To the nearest minor unit, half up: 1.235 at two places is 1.24. */
  public double round(double amount) {
    return Rounding.toPlaces(places, amount);
  }

  /** To the next minor unit: 1.231 at two places is 1.24. */
  public double roundUp(double amount) {
    return wholeCoins(amount * perUnit());
  }

  private double wholeCoins(double counted) {
    double coins = Rounding.settleParts(counted);
    return Math.copySign(Math.ceil(Math.abs(coins)), coins) / perUnit();
  }

  private double perUnit() {
    return Math.pow(10, places);
  }

  /**
   * To a whole number of {@code step}s, none if it is 0, and to a whole minor unit; never below
   * {@code amount}. 61.27 by 0.5 is 61.5.
   *
   * <p>The step is counted in coins before it is multiplied: what it is off by would be multiplied,
   * too, and a thousand large steps come to a coin more.
   */
  public double tidy(double step, double amount) {
    return step > 0
        ? wholeCoins(Math.ceil(Rounding.settle(amount / step)) * Rounding.settle(step * perUnit()))
        : roundUp(amount);
  }

  /** {@code amount} in words, with all places of the currency: 12.50. */
  public String say(double amount) {
    return BigDecimal.valueOf(round(amount)).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  /** The sum of rounded {@code amounts}, without the dust of binary fractions. */
  public double sum(double... amounts) {
    return round(Arrays.stream(amounts).sum());
  }
}
