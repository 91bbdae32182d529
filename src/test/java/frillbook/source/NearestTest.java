package frillbook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class NearestTest {
  private static final List<String> KNOWN = List.of("label", "unit", "formula", "ring_count");

  @Test
  void swappedLettersCountOnce() {
    assertEquals(Optional.of("label"), Nearest.to("lable", KNOWN));
  }

  @Test
  void aMissingLetterIsFound() {
    assertEquals(Optional.of("ring_count"), Nearest.to("ring_cont", KNOWN));
  }

  @Test
  void aWordUnlikeAllOthersHasNoNeighbour() {
    assertEquals(Optional.empty(), Nearest.to("diameter", KNOWN));
  }
}
