package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClosenessTest {

  /**
   * A coin of a sum with twelve digits is at least 1e-12 of it, which is too much; of one with
   * thirteen it is 1e-13 to 1e-12.
   */
  @ParameterizedTest
  @CsvSource({
    "tax 62230982860.59,tax 62230982860.58,true",
    "tax 9999999999.98,tax 9999999999.99,false",
    "tax 324263792715.66,tax 324263792716.66,false",
    "tax 12.50,tax 12.51,false",
    "1 join,2 joins,false",
    "no joins,no joins,true",
    "1 join of 3,1 join of 4,false",
    "tax 62230982860.59,fee 62230982860.58,false"
  })
  void aSentenceSaysTheSameButForCoinsThatNoProgramCarries(String one, String other, boolean same) {
    NamedValues plan = NamedValues.of(Plan.of(Briefs.inch().brief()));
    assertEquals(same, Closeness.within(plan).agree(one, other));
  }
}
