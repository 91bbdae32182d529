package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.template.LineTemplate;
import frillbook.wording.CodeWord;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values that are known by a code and shown by a word. */
final class CodeWordsTest {
  private static String line(String format, String words) {
    return """
      - line: pocket_kind
        label: Pocket
        unit: "-"
        format: %s
        guard: none
        %s
        formula: "2"
        note: Which of them.
    """
        .formatted(format, words);
  }

  private static void told(String words, String message) {
    assertEquals(List.of(message), Written.mistakes(line("code", words)));
  }

  @Test
  void wordsStandBesideTheirCodes() {
    LineTemplate line =
        Written.read(line("code", "words: {open: open, with_flap: a flap}")).lines().get(0);
    assertEquals(
        List.of(new CodeWord("open", "open"), new CodeWord("with_flap", "a flap")), line.words());
  }

  @Test
  void aCodeWithoutWordsIsTold() {
    assertEquals(
        List.of("a.yaml:5:5: line pocket_kind without words; expected the key words; add words: …"),
        Written.mistakes(line("code", "also: false")));
  }

  @Test
  void wordsOfAnotherFormatAreTold() {
    assertEquals(
        List.of(
            "a.yaml:10:5: the unknown key words in line pocket_kind; expected one of line, label,"
                + " unit, format, formula, text, note, guard, also, headline; correct or remove it"),
        Written.mistakes(line("count", "words: {open: open}")));
  }

  @Test
  void aCodeInCapitalLettersIsTold() {
    told(
        "words: {Open: open}",
        "a.yaml:10:19: the code Open; expected words in small letters joined by _; correct it");
  }

  @Test
  void aWordForTwoCodesIsTold() {
    told(
        "words: {open: open, flap: Open}",
        "a.yaml:10:31: Open for two codes; expected each word for one; rename one");
  }
}
