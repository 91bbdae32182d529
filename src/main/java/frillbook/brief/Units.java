package frillbook.brief;

import java.util.Currency;

/**
 * What every length and every sum of one brief, one plan and one workbook is measured in.
 *
 * @param length the unit of lengths
 * @param currency the currency of money (ISO 4217)
 */
public record Units(LengthUnit length, Currency currency) {

  /** Decimal places of the currency's minor unit: JPY 0, EUR 2, KWD 3. */
  public int moneyPlaces() {
    return Math.max(0, currency.getDefaultFractionDigits());
  }

  /** {@code text} with {@code {unit}}, {@code {long_unit}} and {@code {currency}} filled in. */
  public String say(String text) {
    return text.replace("{unit}", length.symbol())
        .replace("{long_unit}", length.longSymbol())
        .replace("{currency}", currency.getCurrencyCode());
  }
}
