package frillbook.said;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.measure.LengthUnit;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How the strips and discs of twelve 18 in cushions lie lengthwise, by hand.
 *
 * <p>Of 54 in of fabric 53 are left between the selvedges, of 504 in bought 503. A strip is 2 1/4
 * in wide and 95.62 in long, so 503 in hold five end to end. Five lanes, 11 1/4 in, leave 41 3/4
 * in: two lines of discs 19 7/8 in across, six to a line, and 2 in that hold no lane. The discs
 * take 6 × 19 7/8 = 119 1/4 in, and the 383 3/4 in behind them four strips in each of the other 18
 * lanes: 5 × 5 + 18 × 4 = 97 strips, one more than twelve cushions of eight take.
 */
class TwelveByHandTest {
  private static final SaidPlan TWELVE =
      SaidPlan.of(LengthUnit.INCH, Map.of("quantity", 12.0, "grain", "lengthwise"));

  @ParameterizedTest
  @CsvSource({
    "lane_strips,5",
    "disc_lines,2",
    "discs_per_line,6",
    "full_beside,1",
    "full_count,97",
    "matching_disc_start,11.25"
  })
  void stripsAndDiscsLieAsLaidByHand(String name, double value) {
    assertEquals(value, (Double) TWELVE.value(name), 1e-9, name);
  }
}
