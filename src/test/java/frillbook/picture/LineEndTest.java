package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineEndTest {
  /** By hand: 3 are taken off the mark, the fabric ends at 10; discs take 2 before the edge. */
  @ParameterizedTest
  @CsvSource({
    "8, true, 5",
    "12, true, 8",
    "20, true, 8",
    "1, true, 0",
    "8, false, 7",
    "20, false, 10",
    "0, false, 0"
  })
  void anEndLiesAtItsMarkAndOnTheFabric(double mark, boolean across, double end) {
    assertEquals(end, new LineEnd(3, 10).at(mark, 2, across));
  }
}
