package frillbook.reading;

import static frillbook.reading.Written.told;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Characters that no workbook can hold, in the messages word for word. */
final class TextRulesTest {
  private static final String EXPECTED =
      "; expected characters that a workbook can hold; take it out";

  @Test
  void aControlCharacterInATextIsTold() {
    told("  - note: \"a\\0b\"\n", "a.yaml:5:11: the character U+0000 in note" + EXPECTED);
  }

  @Test
  void halfACharacterIsTold() {
    told("  - section: \"\\uD800\"\n", "a.yaml:5:14: the character U+D800 in section" + EXPECTED);
  }

  @Test
  void aControlCharacterInANameIsToldAndShown() {
    told(
        "  - {input: \"ring\\0size\", label: L, part: p, kind: text, prompt: P.}\n",
        "a.yaml:5:13: the character U+0000 in input" + EXPECTED,
        "a.yaml:5:13: the name ringU+0000size, which is not in snake case;"
            + " expected words in small letters joined by _ that no spreadsheet reads otherwise;"
            + " choose another name");
  }

  @Test
  void aControlCharacterInTheNameOfASheetIsTold() {
    assertEquals(
        "a.yaml:1:8: the sheet name CutU+000Aout, which holds a control character;"
            + " expected a name that a spreadsheet takes; choose another name",
        Written.mistakes(Written.sheet("sheet: \"Cut\\nout\"\ntitle: T\nwidths: [9]\nrows: []\n"))
            .get(0));
  }

  @Test
  void aControlCharacterInTheNameOfAFileIsTold() {
    assertEquals(
        "workbook.yaml:2:10: the character U+0000 in sheets" + EXPECTED,
        Written.mistakes(
                Written.files(Map.of("workbook.yaml", "title: T\nsheets: [\"a\\0.yaml\"]\n")))
            .get(0));
  }

  @Test
  void aNewLineAndASignBeyondTheFirstPlaneAreRead() {
    Written.read("  - note: \"one\\ntwo \\U0001F9F5\"\n");
  }
}
