package frillbook.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {
  private static Units inches(String code) {
    return new Units(LengthUnit.INCH, Currency.getInstance(code));
  }

  /** ISO 4217; gold is a currency there and has no minor unit at all. */
  @ParameterizedTest
  @CsvSource({"JPY,0", "EUR,2", "KWD,3", "XAU,0"})
  void moneyHasThePlacesOfItsMinorUnit(String code, int places) {
    assertEquals(places, inches(code).moneyPlaces());
  }

  @Test
  void textsNameTheUnitsOfTheBrief() {
    String text = "{unit} per {long_unit} at {currency} a {long_unit}";
    assertEquals("in per yd at EUR a yd", inches("EUR").say(text));
    assertEquals(
        "cm per m at KWD a m", new Units(LengthUnit.CM, Currency.getInstance("KWD")).say(text));
  }
}
