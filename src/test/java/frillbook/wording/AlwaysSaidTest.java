package frillbook.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nobody is led away by words that say nothing of it. */
final class AlwaysSaidTest {
  /** The capital letter among words, which stands for what is looked for. */
  private static Optional<String> capital(String words) {
    String capitals = words.replaceAll("[^A-Z]", "");
    return capitals.isEmpty() ? Optional.empty() : Optional.of(capitals);
  }

  private static Wording words(String text) {
    return text == null ? Wording.NOTHING : new Wording(List.of(new Wording.Words(text)));
  }

  private static Wording.Choice choice(String wide, String narrow) {
    return new Wording.Choice(
        "is_wide", List.of(new Wording.Case(1.0, words(wide))), words(narrow));
  }

  @ParameterizedTest
  @CsvSource({"see A, A", "see nothing,"})
  void wordsAreSaidAlways(String text, String found) {
    assertEquals(Optional.ofNullable(found), words(text).alwaysSaid(AlwaysSaidTest::capital));
  }

  @ParameterizedTest
  @CsvSource({
    "see A,, A",
    ",see A, A",
    "see A, as A, A",
    "see A, nothing,",
    "see A, see B,",
    "nothing,,",
    ",,"
  })
  void aChoiceSaysWhatAllItCanBecomeDo(String wide, String narrow, String found) {
    Wording chosen = new Wording(List.of(choice(wide, narrow)));
    assertEquals(Optional.ofNullable(found), chosen.alwaysSaid(AlwaysSaidTest::capital));
  }

  @ParameterizedTest
  @CsvSource({"see A, nothing, and B, B", "see A, as A, and B, A"})
  void theFirstThatIsAlwaysSaidIsFound(String wide, String narrow, String end, String found) {
    Wording wording =
        new Wording(
            List.of(new Wording.Text("maker_name"), choice(wide, narrow), new Wording.Words(end)));
    assertEquals(Optional.of(found), wording.alwaysSaid(AlwaysSaidTest::capital));
  }
}
