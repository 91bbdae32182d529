package frillbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CustomaryTest {
  /**
   * By hand: an ounce is 28.349523125 g and a yard 0.9144 m exactly, so an ounce on a square yard
   * of 0.83612736 m² is 33.9057475 g/m²; what takes a metre 10 minutes takes a yard 9.144.
   */
  @ParameterizedTest
  @CsvSource({
    "g, 28.349523125, 1, oz",
    "m, 9.144, 10, yd",
    "g/m², 67.811495, 2, oz/yd²",
    "min/m, 10, 9.144, min/yd"
  })
  void amountsAreShownInUnitsOfAYardAndAPound(
      String metric, double amount, double shown, String symbol) {
    Customary unit = Customary.of(metric).orElseThrow();
    assertEquals(symbol, unit.symbol());
    assertEquals(metric, unit.metric());
    assertEquals(shown / amount, unit.times(), 1e-7);
    assertEquals(shown, unit.of(amount), 1e-7);
  }

  @Test
  void otherUnitsAreShownAsTheyAre() {
    assertEquals(Optional.empty(), Customary.of("min"));
  }
}
