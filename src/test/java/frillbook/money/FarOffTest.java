package frillbook.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.brief.MoneySpec;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums that belong together may differ twentyfold. */
class FarOffTest {
  private static final MoneySpec SPEC = Briefs.inch().with("far_off", 20).brief().money();

  private static boolean isPlausible(double materials, double labour, double price, double lowest) {
    return FarOff.isPlausible(
        SPEC,
        materials,
        Filled.of(Costs.class, Map.of("labourTotal", labour)),
        Filled.of(Price.class, Map.of("netEach", price)),
        Filled.of(Bargain.class, Map.of("lowestNet", lowest)));
  }

  /** Twenty times either way; a hair more is twenty times, a cent more is not. */
  @ParameterizedTest
  @CsvSource({
    "10,200,true",
    "200,10,true",
    "10,200.0000001,true",
    "10,200.01,false",
    "200.01,10,false",
    "0,500,true",
    "500,0,true",
    "0,0,true"
  })
  void materialsAndWorkAreComparedWhereThereAreBoth(
      double materials, double labour, boolean plausible) {
    assertEquals(plausible, isPlausible(materials, labour, 50, 40));
  }

  /** A price of twenty times the lowest is the most; what costs nothing may be asked anything. */
  @ParameterizedTest
  @CsvSource({
    "40,40,true",
    "39.9999999,40,true",
    "39.99,40,false",
    "800,40,true",
    "800.01,40,false",
    "0,0,true",
    "900,0,true"
  })
  void aPriceLiesBetweenTheLowestAndManyTimesThat(double price, double lowest, boolean plausible) {
    assertEquals(plausible, isPlausible(60, 100, price, lowest));
  }
}
