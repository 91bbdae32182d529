package frillbook.bias;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pairs of 9 and 8 and of 5 and 4, and two single strips of 8 and 6, with seams of 1. */
class BiasOddTest {
  private static final List<CornerStrips> STRIPS =
      List.of(
          new CornerStrips(1, 0, 5, 4, 0, 0, 8, 0, 0, 0, 0),
          new CornerStrips(2, 0, 9, 8, 0, 0, 0, 0, 0, 0, 6));

  private static List<BiasOdd> odds() {
    return BiasOdd.sorted(STRIPS, new Join(true, 1, 1), 2);
  }

  /**
   * 8, 7 and 7, 5, 4 and 3 are added; of the two that are 8 long the single one comes first. Strips
   * are 2 wide: 9 and 5 count as 7 and 3 until their partners are there.
   */
  @Test
  void aStripOfAPairCountsAsItsShorterSideUntilItsPartnerDoes() {
    assertEquals(
        List.of(
            new BiasOdd(9, 1, 8, 6),
            new BiasOdd(8, 1, 15, 13),
            new BiasOdd(8, 2, 22, 22),
            new BiasOdd(6, 2, 27, 27),
            new BiasOdd(5, 3, 31, 29),
            new BiasOdd(4, 4, 34, 34),
            new BiasOdd(0, 4, 34, 34)),
        odds().subList(0, 7));
  }

  @Test
  void withoutStripsNothingCounts() {
    assertEquals(
        new BiasOdd(0, 0, 0, 0), BiasOdd.sorted(List.of(), new Join(true, 1, 1), 2).get(0));
  }

  /** By hand, as above: 9, 8 and 8, 5 and 4 are those of pairs, so the first and the fifth. */
  @ParameterizedTest
  @CsvSource({"0,0", "1,1", "2,1", "3,0", "4,0", "5,5", "6,0"})
  void theLastStripOfAPairMayLackItsPartner(int count, int lone) {
    assertEquals(lone, BiasOdd.lone(odds(), count));
  }
}
