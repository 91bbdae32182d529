package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HalvingTest {
  private record Length(int tried, double usable, boolean enough, int kept) implements Trial {}

  private static List<Length> search(int rows, int needed) {
    return Halving.search(
        rows,
        (steps, tooSmall) ->
            new Length(steps, steps, steps >= needed, steps >= needed ? tooSmall : steps));
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

  @Test
  void everySearchTakesAllItsRows() {
    assertEquals(20, search(20, 1).size());
    assertEquals(20, search(20, 777_777).size());
  }
}
