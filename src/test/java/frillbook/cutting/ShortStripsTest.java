package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ShortStripsTest {
  private static Optional<ShortStrips.Strip> strip(double length) {
    return Optional.of(new ShortStrips.Strip(length));
  }

  private static final Optional<ShortStrips.Strip> NONE = Optional.empty();

  @Test
  void sixStandSideBySide() {
    assertEquals(
        List.of(
            new ShortStrips(1, strip(40), strip(39), strip(38), strip(37), strip(36), strip(35)),
            new ShortStrips(7, strip(34), strip(33), NONE, NONE, NONE, NONE)),
        ShortStrips.all(List.of(40.0, 39.0, 38.0, 37.0, 36.0, 35.0, 34.0, 33.0)));
  }

  @Test
  void aFullRowBeginsNoFurtherOne() {
    assertEquals(1, ShortStrips.all(List.of(6.0, 5.0, 4.0, 3.0, 2.0, 1.0)).size());
    assertEquals(List.of(), ShortStrips.all(List.of()));
  }

  /** 72 by six. */
  @Test
  void theMostFillTwelveRows() {
    List<Double> most = IntStream.range(0, OddPiece.MOST).mapToObj(i -> 100.0 - i).toList();
    assertEquals(12, ShortStrips.ROWS);
    assertEquals(12, ShortStrips.all(most).size());
    assertEquals(67, ShortStrips.all(most).get(11).shortNo());
  }
}
