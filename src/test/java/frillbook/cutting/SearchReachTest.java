package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SearchReachTest {

  /** 2¹³ = 8192 and 2¹⁴ = 16384: more than that takes two buy steps at a time, 32768 at most. */
  @ParameterizedTest
  @CsvSource({
    ".3,1,1",
    "1,1,1",
    "2.5,2,1",
    "8192,13,1",
    "8193,14,1",
    "16384,14,1",
    "16384.1,14,2",
    "32768,14,2",
    "32769,14,3",
    "163840,14,10"
  })
  void aStepIsOfTheShopAsLongAsFourteenRowsReachFarEnough(double buySteps, int rows, int step) {
    assertEquals(new SearchReach(rows, step), SearchReach.of(buySteps));
  }
}
