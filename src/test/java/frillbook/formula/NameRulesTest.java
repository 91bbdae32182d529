package frillbook.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What Excel refuses as a name: its specifications and limits, "Names in formulas". */
final class NameRulesTest {
  @ParameterizedTest
  @ValueSource(strings = {"diameter", "ring_count", "row_1", "xfe1", "a1048577", "ab", "row2col3x"})
  void aWordNoSpreadsheetReadsOtherwiseIsTaken(String name) {
    assertEquals(Optional.empty(), NameRules.objection(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a1", "xfd1048576", "row1", "r", "c", "r1c1", "rc", "c12"})
  void aCellReferenceIsRefused(String name) {
    assertEquals(Optional.of("is a cell reference in a spreadsheet"), NameRules.objection(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Diameter", "2_rings", "ring count", "ring-count", "_ring", "ring_"})
  void anythingButSnakeCaseIsRefused(String name) {
    assertEquals(Optional.of("is not in snake case"), NameRules.objection(name));
  }

  @Test
  void aNameOf255CharactersIsTheLongest() {
    assertEquals(Optional.empty(), NameRules.objection("x".repeat(255)));
    assertEquals(
        Optional.of("is longer than 255 characters"), NameRules.objection("x".repeat(256)));
  }

  @ParameterizedTest
  @CsvSource({"check_fault,is reserved", "sum,is the name of a function"})
  void namesThatMeanSomethingElseAreRefused(String name, String objection) {
    assertEquals(Optional.of(objection), NameRules.objection(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Cut/join", "Rows?", "[1]", "a:b", "'Brief", "History", ""})
  void aSheetNameThatExcelRefusesIsTold(String name) {
    assertEquals(true, NameRules.sheetObjection(name).isPresent());
  }

  @Test
  void aSheetNameOf31CharactersIsTheLongest() {
    assertEquals(Optional.empty(), NameRules.sheetObjection("x".repeat(31)));
    assertEquals(
        Optional.of("is longer than 31 characters"), NameRules.sheetObjection("x".repeat(32)));
  }
}
