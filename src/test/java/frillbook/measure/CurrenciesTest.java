package frillbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the ISO 4217 data of the JDK ({@code java.util.Currency}). */
class CurrenciesTest {
  /** The JDK's data are brought up to date between versions; ours may be behind by a few. */
  private static final int NEWER = 3;

  /** In the order of their codes, so that every run meets the same one as its first, second … */
  static List<Currency> withCoins() {
    return Currency.getAvailableCurrencies().stream()
        .filter(currency -> currency.getDefaultFractionDigits() >= 0)
        .sorted(Comparator.comparing(Currency::getCurrencyCode))
        .toList();
  }

  static List<Currency> known() {
    return withCoins().stream().filter(c -> Currencies.has(c.getCurrencyCode())).toList();
  }

  @ParameterizedTest
  @MethodSource("known")
  void everyCurrencyHasItsPlaces(Currency currency) {
    assertEquals(
        currency.getDefaultFractionDigits(), Currencies.places(currency.getCurrencyCode()));
  }

  @Test
  void allButTheNewestAreKnown() {
    assertTrue(withCoins().size() - known().size() <= NEWER, known().size() + " known");
    assertTrue(Currencies.codes().size() - known().size() <= NEWER, Currencies.codes() + "");
  }

  /** Gold, the test code and no currency have no coins; ZZZ is none of the codes. */
  @ParameterizedTest
  @ValueSource(strings = {"XAU", "XTS", "XXX", "ZZZ", "", "EU", "eur", "AED AFN"})
  void whatHasNoCoinsIsNone(String code) {
    assertFalse(Currencies.has(code));
  }

  @Test
  void codesAreInTheOrderOfTheAlphabet() {
    assertEquals(List.of("ADP", "AED", "AFA"), Currencies.codes().subList(0, 3));
  }
}
