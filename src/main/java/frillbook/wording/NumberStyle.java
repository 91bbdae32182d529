package frillbook.wording;

import frillbook.measure.Rounding;
import java.math.BigDecimal;
import java.util.Locale;

/**
 * How a number is said in a sentence, the same in every language of the system.
 *
 * @param least places that are always said
 * @param most places that are said at most; a number is rounded half away from zero
 * @param percent whether it is said as so many hundredths, with the sign: 0.2 is 20%
 * @param money whether it has the places of the currency, whatever the others say, and its
 *     thousands apart, as in a cell
 */
public record NumberStyle(int least, int most, boolean percent, boolean money) {
  /** A whole number: 26. */
  public static final NumberStyle WHOLE = new NumberStyle(0, 0, false, false);

  /** A sum of money without the currency's code: 12.50, 1,482.00. */
  public static final NumberStyle MONEY = new NumberStyle(0, 0, false, true);

  /** {@code number} in words; 2.5 with at most two places is 2.5, with at least two 2.50. */
  String say(double number, int moneyPlaces) {
    int fewest = money ? moneyPlaces : least;
    int places = money ? moneyPlaces : most;
    double said = percent ? 100 * number : number;
    BigDecimal rounded = BigDecimal.valueOf(Rounding.toPlaces(places, said));
    BigDecimal told = atLeast(fewest, rounded);
    String words =
        money ? String.format(Locale.ROOT, "%,." + places + "f", told) : told.toPlainString();
    return words + (percent ? "%" : "");
  }

  private static BigDecimal atLeast(int places, BigDecimal rounded) {
    BigDecimal bare = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    return bare.scale() < places ? bare.setScale(places) : bare;
  }
}
