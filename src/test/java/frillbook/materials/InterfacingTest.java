package frillbook.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.discs.DiscSizes;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InterfacingTest {
  /**
   * By hand: discs of 19 7/8 in, one beside another from 39 3/4 in on. Interfacing of 19 3/4 in is
   * laid in two widths of 19 7/8 in, of 9 3/4 in in three, three times for three discs.
   */
  @ParameterizedTest
  @CsvSource({
    "none,36,3,0,1,1,0",
    "base,36,1,1,1,1,19.875",
    "base,36,3,3,1,1,59.625",
    "base,39.75,3,3,2,1,39.75",
    "base_and_back,60,3,6,3,1,39.75",
    "base,19.875,3,3,1,1,59.625",
    "base,19.75,1,1,1,2,39.75",
    "base,9.75,3,3,1,3,178.875",
    "none,9.75,3,0,1,1,0"
  })
  void discsLieInStraightRows(
      String interfaced,
      double width,
      int quantity,
      int count,
      int perRow,
      int widths,
      double length) {
    Brief brief =
        Briefs.inch()
            .with("interfaced", interfaced)
            .with("interfacing_width", width)
            .with("quantity", quantity)
            .brief();
    Interfacing expected = new Interfacing(count, perRow, widths, length);
    assertEquals(expected, Interfacing.of(brief, DiscSizes.of(brief)));
  }
}
