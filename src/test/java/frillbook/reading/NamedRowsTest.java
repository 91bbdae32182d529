package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.template.ColumnTemplate;
import frillbook.template.NamedRow;
import frillbook.template.TableTemplate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tables whose rows have names and formulas of their own. */
class NamedRowsTest {
  private static final String ROWS =
      """
        - line: whole
          label: Whole
          unit: "-"
          format: number
          guard: none
          formula: share.sky+share.sea
          note: Of both.
        - table: shares
          guard: none
          rows:
            - {row: sky, part: the sky, share: "2"}
            - {row: sea, part: the sea, share: 1+2}
          columns:
            - {column: part, label: Part, unit: "-", format: code, note: Which.}
            - {column: share, label: Share, unit: "-", format: number, note: How much.}
            - {column: twice, label: Twice, unit: "-", format: number, formula: "2*[share]", note: Two.}
            - {column: said, label: Said, unit: "-", format: text, text: "{part}: {twice, number, 0}", note: Words.}
      """;

  private static TableTemplate table() {
    return Written.read(ROWS).tables().get(0);
  }

  private static List<String> mistakes(String found, String written) {
    assertTrue(ROWS.contains(found), found);
    return Written.mistakes(ROWS.replace(found, written));
  }

  @Test
  void everyRowHasItsOwnFormula() {
    ColumnTemplate share = table().columns().get(1);
    assertEquals("2", share.formula(1).toString());
    assertEquals("1+2", share.formula(2).toString());
    assertEquals("2*[share]", table().columns().get(2).formula(2).toString());
  }

  @Test
  void aRowIsNamedInCodeAndInWords() {
    assertEquals("sea", table().named().get(1).name());
    assertEquals("the sea", table().columns().get(0).words().get(1).word());
  }

  @Test
  void aCellIsNamedByColumnAndRow() {
    assertEquals("share.sea", table().named().get(1).cell(table().columns().get(1)));
    assertEquals("share", NamedRow.column("share.sea"));
  }

  /** The condition takes the formula of the column, whose cell is blank in a blank row. */
  @Test
  void aRowMayBeShownByWhatStandsInIt() {
    String shown = ROWS.replace("table: shares", "table: shares\n    show: \"[share]>2\"");
    assertTrue(Written.read(shown).tables().get(0).show().isPresent());
  }

  @Test
  void aRowShownByWhatNeedsItsOwnCellsIsACircle() {
    String shown = ROWS.replace("table: shares", "table: shares\n    show: \"[share]>2\"");
    List<String> mistakes =
        Written.mistakes(
            shown
                .replace("1+2", "\"[other]+2\"")
                .replace(
                    "- {column: twice",
                    "- {column: other, label: O, unit: \"-\", format: number, formula: \"1\", note: N.}\n      - {column: twice"));
    assertEquals(1, mistakes.size(), mistakes::toString);
    assertTrue(
        mistakes.get(0).contains("a circle: part needs other needs part"), mistakes::toString);
  }

  @Test
  void aRowThatLacksAFormulaIsTold() {
    assertEquals(
        List.of("a.yaml:16:9: row sea without share; expected the key share; add share: …"),
        mistakes(", share: 1+2", ""));
  }

  @Test
  void aKeyThatIsNoColumnIsTold() {
    assertEquals(
        List.of(
            "a.yaml:15:47: the unknown key shade in row sky; expected one of row, part, share;"
                + " correct or remove it (did you mean share?)"),
        mistakes("share: \"2\"", "share: \"2\", shade: 3"));
  }

  @Test
  void twoRowsOfOneNameAreTold() {
    assertTrue(
        mistakes("row: sea", "row: sky")
            .contains("a.yaml:16:9: the row sky twice; expected each row once; rename one"));
  }

  @Test
  void aCellThatIsNotThereIsTold() {
    assertEquals(
        List.of(
            "a.yaml:10:24: the unknown name share.see; expected the name of an input, line, check,"
                + " column or block; correct it or add what it names (did you mean share.sea?)"),
        mistakes("share.sea", "share.see"));
  }
}
