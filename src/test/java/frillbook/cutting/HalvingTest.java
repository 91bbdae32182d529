package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HalvingTest {
  private record Length(int tried, int kept) implements Trial {}

  private static List<Length> search(int rows, int needed) {
    return search(new SearchReach(rows, 1), needed);
  }

  private static List<Length> search(SearchReach reach, int needed) {
    return Halving.search(
        reach, (steps, tooSmall) -> new Length(steps, steps >= needed ? tooSmall : steps));
  }

  /** 2²⁰ − 1 = 1 048 575 is the longest of twenty rows. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 31, 32, 33, 1000, 524_288, 524_289, 1_048_575})
  void theShortestLengthIsFound(int needed) {
    assertEquals(needed, Halving.shortest(search(20, needed)).orElseThrow().tried());
  }

  @Test
  void tenRowsSearchAThousandLengths() {
    assertEquals(1023, Halving.shortest(search(10, 1023)).orElseThrow().tried());
    assertTrue(Halving.shortest(search(10, 1024)).isEmpty());
  }

  /** Three rows of four each try 16, then 24 or 8, and reach 28. */
  @ParameterizedTest
  @CsvSource({"1,4", "4,4", "17,20", "20,20", "21,24", "28,28"})
  void aSearchInWiderStepsFindsTheFirstOfThemThatIsEnough(int needed, int found) {
    SearchReach reach = new SearchReach(3, 4);
    assertEquals(found, Halving.shortest(search(reach, needed)).orElseThrow().tried());
    assertTrue(Halving.shortest(search(reach, 29)).isEmpty());
  }

  @Test
  void everySearchTakesAllItsRows() {
    assertEquals(20, search(20, 1).size());
    assertEquals(20, search(20, 777_777).size());
  }
}
