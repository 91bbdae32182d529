package frillbook.reading;

import static frillbook.reading.Written.line;
import static frillbook.reading.Written.told;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a formula that mixes numbers, texts and whole columns, word for word. */
final class FormulaSortsTest {
  /** Lines 5 to 11. */
  private static final String WORDS = line("maker_words", "text", "'\"abc\"'");

  /** Five lines: a column of numbers and one of texts. */
  private static final String TABLE =
      """
        - table: ring
          guard: none
          rows: 3
          columns:
            - {column: ring_no, label: L, unit: in, format: count, formula: "{n}", note: N.}
            - {column: ring_words, label: L, unit: in, format: text, formula: '"a"', note: N.}
      """;

  private static final String USE_A_NUMBER =
      " use a number, or compare the text with another or join them with &";

  private static final String TAKE_ONE =
      " expected a single cell, or a function that takes a column;"
          + " take one of them with INDEX, or all with SUM, MAX or SUMPRODUCT";

  @Test
  void aTextInArithmeticIsTold() {
    told(
        line("ring_half", "2+\"abc\"*2"),
        "a.yaml:10:16: the text \"abc\" where * needs a number; expected a number on either side;"
            + USE_A_NUMBER);
  }

  @ParameterizedTest
  @ValueSource(strings = {"+", "-", "*", "/", "^"})
  void aLineOfTextInArithmeticIsTold(String operator) {
    told(
        WORDS + line("ring_half", "2" + operator + "maker_words"),
        "a.yaml:17:16: the text maker_words where "
            + operator
            + " needs a number; expected a number on either side;"
            + USE_A_NUMBER);
  }

  @Test
  void anInputOfTextInArithmeticIsTold() {
    told(
        "  - {input: grain, label: L, part: p, kind: choice, prompt: P., choices: {a: a}, default: a}\n"
            + line("ring_half", "-grain"),
        "a.yaml:11:15: the text grain where - needs a number; expected a number on either side;"
            + USE_A_NUMBER);
  }

  @Test
  void aTextInASumIsTold() {
    told(
        WORDS + line("ring_half", "SUM(1,maker_words)"),
        "a.yaml:17:20: the text maker_words where SUM needs a number;"
            + " expected numbers in the brackets of SUM;"
            + USE_A_NUMBER);
  }

  @Test
  void aColumnOfTextsInASumIsTold() {
    told(
        TABLE + line("ring_half", "SUM(ring_words)"),
        "a.yaml:16:18: the text ring_words where SUM needs a number;"
            + " expected numbers in the brackets of SUM;"
            + USE_A_NUMBER);
  }

  @Test
  void aTextThatIfMayGiveIsTold() {
    told(
        line("ring_half", "2*IF(1=1,\"none\",3)"),
        "a.yaml:10:16: a text that IF gives where * needs a number;"
            + " expected a number on either side;"
            + USE_A_NUMBER);
  }

  @Test
  void aJoinedTextInArithmeticIsTold() {
    told(
        line("ring_half", "2*(1&\" in\")"),
        "a.yaml:10:18: a text joined with & where * needs a number;"
            + " expected a number on either side;"
            + USE_A_NUMBER);
  }

  @Test
  void aTextAsConditionIsTold() {
    told(
        WORDS + line("ring_half", "IF(maker_words,1,2)"),
        "a.yaml:17:17: the text maker_words where IF needs a condition;"
            + " expected a condition, or a number that is 1 or 0;"
            + " compare it: name=\"text\" or name>0");
  }

  @Test
  void aUseThatIsATextIsTold() {
    told(
        WORDS
            + "  - {input: maker_name, label: L, part: p, kind: text, prompt: P., used: maker_words}\n",
        "a.yaml:12:74: used of input maker_name that gives a text;"
            + " expected a condition, or a number that is 1 or 0;"
            + " compare it: name=\"text\" or name>0");
  }

  @Test
  void aGuardThatIsATextIsTold() {
    told(
        WORDS + line("ring_half", "1").replace("guard: none", "guard: maker_words"),
        "a.yaml:12:5: the guard maker_words, which is a text;"
            + " expected the name of a line that is 1 or 0, or none;"
            + " add a line of format flag that compares the text");
  }

  @Test
  void aLineOfNumbersThatGivesATextIsTold() {
    told(
        line("ring_half", "'\"abc\"'"),
        "a.yaml:10:15: line ring_half that gives a text; expected a number;"
            + " write format: text or another formula");
  }

  @Test
  void aLineOfTextThatGivesANumberIsTold() {
    told(
        line("ring_half", "text", "1+1"),
        "a.yaml:10:14: line ring_half of format text that gives a number; expected a text;"
            + " choose another format, or join the number to a text with & and FIXED");
  }

  @Test
  void aLineThatGivesTrueOrFalseIsTold() {
    told(
        line("ring_half", "flag", "1=2"),
        "a.yaml:10:14: line ring_half that gives TRUE or FALSE; expected a number or a text;"
            + " write IF(…,1,0) around it");
  }

  @Test
  void aWholeColumnWhereOneCellIsMeantIsTold() {
    told(
        TABLE + line("ring_half", "1+ring_no"),
        "a.yaml:16:16: all cells of ring_no where one cell is meant;"
            + TAKE_ONE
            + "; within the same table write [ring_no]");
  }

  @Test
  void aWholeColumnAloneIsTold() {
    told(
        TABLE + line("ring_half", "ring_no"),
        "a.yaml:16:14: all cells of ring_no where one cell is meant;"
            + TAKE_ONE
            + "; within the same table write [ring_no]");
  }

  /** ROUND takes one number; a column times two is none even for SUM. */
  @Test
  void aWholeColumnWithinAFunctionOfOneCellIsTold() {
    told(
        TABLE + line("ring_half", "ROUND(ring_no,0)+SUM(ring_no*2)"),
        "a.yaml:16:20: all cells of ring_no where one cell is meant;"
            + TAKE_ONE
            + "; within the same table write [ring_no]",
        "a.yaml:16:35: all cells of ring_no where one cell is meant;"
            + TAKE_ONE
            + "; within the same table write [ring_no]");
  }

  @Test
  void aColumnThatAFunctionHandsOnIsTold() {
    told(
        TABLE + line("ring_half", "CHOOSE(1,ring_no,ring_no)"),
        "a.yaml:16:14: a whole column that CHOOSE gives where one cell is meant;" + TAKE_ONE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "SUM(ring_no)+MAX(ring_no,4)",
        "SUMPRODUCT((ROUND(ring_no,0)<2)*ring_no)",
        "INDEX(ring_no,2)*2",
        "INDEX(CHOOSE(1,ring_no,ring_no),2)",
        "MATCH(\"a\",ring_words,0)",
        "COUNTIF(ring_words,\"a\")",
        "IF(INDEX(ring_words,1)=\"a\",1,\"\")",
        "(1<2)*1+LEN(maker_words)",
        "-2^2%",
      })
  void whatGoesTogetherIsRead(String formula) {
    Written.read(WORDS + TABLE + line("ring_half", "'" + formula + "'"));
  }
}
