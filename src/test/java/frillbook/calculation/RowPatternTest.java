package frillbook.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells as ECMA-376-1, 18.17.2.3, has them: one to three letters and digits, $ where fixed. */
final class RowPatternTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          IF($A7="","",B6)      | IF($A[0]="","",B[-1])
          XFD10+$XFD$7          | XFD[3]+$XFD$7
          A$7:A7                | A$7:A[0]
          "B3"&B3&"             | "B3"&B[-4]&"
          LOG10(2)*LOG10        | LOG10(2)*LOG[3]
          ring_12+b3+AB12_c+1E5 | ring_12+b3+AB12_c+1E5
          ABCD7-A7.5-A7B        | ABCD7-A7.5-A7B
          XFD1048576+XFE9       | XFD[1048569]+XFE9
          A1048577+A77777777777 | A1048577+A77777777777
          """)
  void rowsThatAreNotFixedAreCountedFromTheFormula(String formula, String pattern) {
    assertEquals(Optional.of(pattern), RowPattern.of(formula, 7));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Brief!B7", "B7*Prices[[#This Row],[yard]]"})
  void whatReadsOtherwiseInEveryRowHasNone(String formula) {
    assertEquals(Optional.empty(), RowPattern.of(formula, 7));
  }
}
