package frillbook.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A number in a sentence, as it is written out for a spreadsheet. */
final class NumeralTest {
  private static String written(String formula) {
    return Numeral.writtenOut(FormulaLexer.pieces(formula, 0)).stream()
        .map(FormulaToken::text)
        .collect(Collectors.joining());
  }

  @Test
  void aNumberIsRoundedAndGetsAsManyDecimalsAsAreNotZero() {
    assertEquals(
        "\"a \"&FIXED(ROUND(ROUND((b+c)*100,4),0)/100,2"
            + "-(MOD(ROUND(ROUND((b+c)*100,4),0),10)=0)"
            + "-(MOD(ROUND(ROUND((b+c)*100,4),0),100)=0),TRUE)&d",
        written("\"a \"&NUMERAL(b+c,2)&d"));
  }

  @Test
  void theNumberMayBeAFunctionOfSeveralArguments() {
    assertEquals(
        "FIXED(ROUND(ROUND((MAX(b,2))*10,4),0)/10,1-(MOD(ROUND(ROUND((MAX(b,2))*10,4),0),10)=0),TRUE)",
        written("NUMERAL(MAX(b,2),1)"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "NUMERAL(b)",
        "NUMERAL()",
        "NUMERAL(,2)",
        "NUMERAL(b,4)",
        "NUMERAL(b,0)",
        "NUMERAL(b,2"
      })
  void withoutItsDecimalsItIsLeftToBeTold(String formula) {
    assertEquals(formula, written(formula));
  }

  @Test
  void aNumeralWithoutDecimalsIsAMistake() {
    String line =
        """
          - line: ring_half
            label: L
            unit: in
            format: text
            guard: none
            formula: 1&NUMERAL(1)
            note: N.
        """;
    assertEquals(
        List.of(
            "a.yaml:10:16: a NUMERAL without its decimals;"
                + " expected NUMERAL(number,1), NUMERAL(number,2) or NUMERAL(number,3);"
                + " say how many decimals it has at most"),
        Written.mistakes(line));
  }
}
