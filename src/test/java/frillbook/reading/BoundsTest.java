package frillbook.reading;

import static frillbook.reading.Written.line;
import static frillbook.reading.Written.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import frillbook.source.TemplateException;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is too long, too deep or too many is told, word for word, and stops nobody. */
final class BoundsTest {
  private static final String TOO_DEEP =
      " lists and keys more than 50 deep; expected keys, values and lists of a template;"
          + " check brackets and indents from here upwards";

  /** The sheet, its rows and the row are three deep, so the forty-eighth bracket is too deep. */
  @Test
  void aHundredThousandListsWithinEachOtherAreTold() {
    told("  - x: " + "[".repeat(100_000) + "]".repeat(100_000) + "\n", "a.yaml:5:55:" + TOO_DEEP);
  }

  /** Each pair of brackets is four characters wide: 8 + 4 × 47. */
  @Test
  void aHundredThousandKeysWithinEachOtherAreTold() {
    told(
        "  - x: " + "{a: ".repeat(100_000) + "}".repeat(100_000) + "\n",
        "a.yaml:5:196:" + TOO_DEEP);
  }

  @Test
  void rowsThatRepeatThemselvesAreTold() {
    told(
        "  - &a\n    each: {x: [1]}\n    rows: [*a]\n",
        "a.yaml:5:5: each within each, more than 10 deep;"
            + " expected rows that do not repeat themselves; take out the inner one");
  }

  /** 200 × 200 notes. */
  @Test
  void rowsRepeatedTooOftenAreTold() {
    String items = "1" + ", 1".repeat(199);
    String mistake =
        ": more than 10000 repeated rows and columns; expected fewer in the whole workbook;"
            + " give each shorter lists, or use a table";
    told(
        """
          - each: {x: [%s]}
            rows:
              - each: {y: [%s]}
                rows:
                  - note: a
        """
            .formatted(items, items),
        "a.yaml:5:5" + mistake,
        "a.yaml:7:9" + mistake);
  }

  /** 89 × 90 characters and three: {@code {a}} becomes 90 long, and the last is left as it is. */
  @Test
  void aTextThatGrowsByItsVariablesIsTold() {
    told(
        """
          - each: {a: [%s]}
            rows:
              - note: "%s"
        """
            .formatted("x".repeat(90), "{a}".repeat(90)),
        "a.yaml:7:16: note of 8013 characters; expected at most 8000; shorten it");
  }

  @Test
  void aLongFormulaIsTold() {
    told(
        line("ring_half", "1" + "+1".repeat(1500)),
        "a.yaml:10:14: a formula of 3001 characters; expected at most 3000;"
            + " give a part of it a line of its own and use its name");
  }

  @Test
  void aTableOfTooManyColumnsIsTold() {
    String items =
        "1" + IntStream.range(2, 252).mapToObj(i -> ", " + i).collect(Collectors.joining());
    String mistake = Written.mistakes(table(1, items)).get(0);
    assertEquals(
        "a.yaml:5:5: table rings: 251 columns; expected at most 250;"
            + " give tables fewer rows or columns",
        mistake);
  }

  /** 10,000 rows of 26 columns. */
  @Test
  void tablesOfTooManyCellsAreTold() {
    String items =
        "1" + IntStream.range(2, 27).mapToObj(i -> ", " + i).collect(Collectors.joining());
    String mistake = Written.mistakes(table(10_000, items)).get(0);
    assertEquals(
        "a.yaml:5:5: table rings: 260000 cells in tables so far; expected at most 250000;"
            + " give tables fewer rows or columns",
        mistake);
  }

  private static String table(int rows, String items) {
    return """
      - table: rings
        guard: none
        rows: %d
        columns:
          - each: {c: [%s]}
            columns:
              - {column: "ring_{c}", label: L, unit: in, format: count, formula: "1", note: N.}
    """
        .formatted(rows, items);
  }

  @Test
  void tooManySheetsAreTold() {
    String files = "b.yaml" + ", b.yaml".repeat(250);
    String mistake =
        Written.mistakes(
                Written.files(Map.of("workbook.yaml", "title: T\nsheets: [" + files + "]\n")))
            .get(250);
    assertEquals(
        "workbook.yaml:2:2010: 251 sheets; expected at most 250; take some out of sheets", mistake);
  }

  /** A hundred thousand keys: the first fifty are told and the others counted. */
  @Test
  void fiftyMistakesAreToldAndTheOthersCounted() {
    String keys =
        IntStream.range(0, 100_000)
            .mapToObj(i -> "    k" + i + ": 1\n")
            .collect(Collectors.joining());
    TemplateException told =
        assertThrows(
            TemplateException.class,
            () -> TemplateReader.read(Written.rows("  - note: a\n" + keys)));
    String[] lines = told.getMessage().split("\n");
    assertEquals(51, lines.length);
    assertEquals(
        "a.yaml:55:5: the unknown key k49 in row; expected one of note; correct or remove it",
        lines[49]);
    assertEquals("There are 99950 more mistakes. Correct these first.", lines[50]);
  }

  @Test
  void aLongWordIsCutShortInAMessage() {
    told(
        "  - " + "x".repeat(1000) + ": 1\n",
        "a.yaml:5:5: a row beginning with "
            + "x".repeat(179)
            + " … "
            + "x".repeat(60)
            + "; expected a row beginning with section, note, caution, sentence, input, line, flag, check,"
            + " table, picture, each, input_checks, verdict, new_page, said, quote, excerpt, cells, step, beside or glossary;"
            + " put the key that says what the row is first");
  }
}
