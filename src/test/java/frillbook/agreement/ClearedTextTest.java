package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An emptied text is no text, in Apache POI too: no 0 stands for it. */
final class ClearedTextTest {
  static Stream<TrialBrief> cleared() {
    return ClearedTexts.each(Trials.CM);
  }

  private static Map<String, Object> cells(TrialBrief brief) {
    SheetValues sheet = Trials.given(brief);
    Map<String, Object> cells = new LinkedHashMap<>();
    Trials.workbook(brief.unit())
        .formulaCells()
        .forEach(cell -> cells.put(SheetValues.where(cell), sheet.value(cell)));
    return cells;
  }

  /** A text of no letters cannot be taken for a number. */
  private static TrialBrief withoutLetters(TrialBrief cleared) {
    TrialBrief brief = cleared;
    for (String name : cleared.changes().keySet()) {
      brief = cleared.changes().get(name) == null ? brief.with(name, "") : brief;
    }
    return brief;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cleared")
  void anEmptiedCellReadsLikeATextOfNoLetters(TrialBrief brief) {
    assertEquals(cells(withoutLetters(brief)), cells(brief));
  }

  @Test
  void wordsAreSeenWhereTheyAreNotCleared() {
    Map<String, Object> cells = cells(ClearedTexts.worded(Trials.CM));
    long worded =
        cells.values().stream().filter(v -> v.toString().contains("words of the maker")).count();
    assertTrue(worded >= 7, worded + " cells");
  }
}
