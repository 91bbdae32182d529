package frillbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScalesTest {
  /**
   * An ounce is 28.349523125 g: 100 g are 3.53 oz; 453 g are 15.98 oz, which are 16.0; 500 g are
   * 17.64 oz, and 18 oz are 1 lb 2 oz; 4368 g are 154.08 oz, and 9 × 16 is 144.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0 oz",
    "100, 3.5 oz",
    "28.349523125, 1 oz",
    "453, 1 lb",
    "453.6, 1 lb",
    "500, 1 lb 2 oz",
    "4368, 9 lb 10 oz"
  })
  void besideInchesStandOuncesAndPounds(double grams, String said) {
    assertEquals(said, Scales.say(LengthUnit.INCH, grams));
  }

  @ParameterizedTest
  @CsvSource({"364.4, 364 g", "4367.5, 4368 g", "0, 0 g"})
  void besideCentimetresStandGrams(double grams, String said) {
    assertEquals(said, Scales.say(LengthUnit.CM, grams));
  }
}
