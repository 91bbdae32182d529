package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.naming.NamedValues;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClosenessTest {

  /**
   * Up to 1e10, 1e-12 of the largest number of a plan are less than 0.01. Of 3 × 10^10 they are
   * 0.03: a thousandth too much in each of three cushions is not told, a whole dinar is.
   */
  @ParameterizedTest
  @CsvSource({
    "6.3e10,tax 62230982860.59,tax 62230982860.58,true",
    "3e10,saves 123002388.843,saves 123002388.846,true",
    "3e10,saves 123002388.84,saves 123002389.84,false",
    "9e9,tax 8999999999.98,tax 8999999999.99,false",
    "1e4,tax 12.50,tax 12.51,false",
    "1e4,1 join,2 joins,false",
    "1e4,no joins,no joins,true",
    "1e4,1 join of 3,1 join of 4,false",
    "6.3e10,tax 62230982860.59,fee 62230982860.58,false"
  })
  void aSentenceSaysTheSameButForCoinsThatNoProgramCarries(
      double largest, String one, String other, boolean same) {
    NamedValues plan = new NamedValues(Map.of("price", largest), Map.of());
    assertEquals(same, Closeness.within(plan).agree(one, other));
  }
}
