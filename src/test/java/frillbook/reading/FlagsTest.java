package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.template.LineTemplate;
import frillbook.wording.CodeFlag;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines that are 1 while an input has a code, and formulas that ask for its word instead. */
final class FlagsTest {
  private static final String WAY =
      """
        - {input: way, label: Way, part: p, kind: choice, choices: {up: up, aside: on the side}, default: up, prompt: P.}
      """;

  private static String flag(String input, String code) {
    return WAY
        + "  - {flag: is_aside, label: L, input: %s, code: %s, note: N.}%n".formatted(input, code);
  }

  private static void told(String rows, String message) {
    assertEquals(List.of(message), Written.mistakes(rows));
  }

  private static String line(String formula) {
    return flag("way", "aside")
        + "  - {line: depth, label: L, unit: \"-\", format: count, guard: none, formula: '"
        + formula
        + "', note: N.}\n";
  }

  @Test
  void aFlagIsALineWithoutAFormula() {
    LineTemplate line = Written.read(flag("way", "aside")).lines().get(0);
    assertEquals(Optional.of(new CodeFlag("way", "aside")), line.flag());
    assertEquals(Optional.empty(), line.guard());
    assertEquals("", line.formula().toString());
  }

  @Test
  void formulasMaySpeakOfIt() {
    assertEquals(2, Written.read(line("IF(is_aside=1,2,3)")).lines().size());
  }

  @Test
  void aFlagOfNoChoiceIsTold() {
    told(
        flag("ways", "aside"),
        "a.yaml:6:5: the input ways of flag is_aside, which is not a choice; expected an input of kind"
            + " choice; correct it (did you mean way?)");
  }

  @Test
  void aCodeThatTheInputHasNotIsTold() {
    told(
        flag("way", "asied"),
        "a.yaml:6:5: the code asied of flag is_aside; expected one of up, aside; correct it (did you"
            + " mean aside?)");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"IF(way=\"on the side\",2,3)", "IF(way <> \"Aside\",2,3)", "IF(\"up\"=way,2,3)"})
  void aFormulaThatComparesAWordIsTold(String formula) {
    String word = formula.replaceAll("[^\"]*(\"[^\"]*\").*", "$1");
    int column = 78 + formula.indexOf(word);
    told(
        line(formula),
        "a.yaml:7:"
            + column
            + ": a comparison with "
            + word
            + ", a word of way; expected a flag; add a row flag: … with input: way and its code, and"
            + " test that");
  }

  @Test
  void otherTextsMayBeCompared() {
    assertEquals(2, Written.read(line("IF(way=\"\",2,3)")).lines().size());
  }

  @Test
  void aWordOfACalculatedCodeIsToldToo() {
    String kind =
        "  - {line: kind, label: L, unit: \"-\", format: code, words: {open: open, flap: a flap},"
            + " guard: none, formula: 1, note: N.}\n";
    told(
        kind
            + "  - {line: depth, label: L, unit: \"-\", format: count, guard: none, formula:"
            + " 'IF(kind=\"a flap\",2,3)', note: N.}\n",
        "a.yaml:6:86: a comparison with \"a flap\", a word of kind; expected a number or a flag;"
            + " test what kind hangs on, since words may be changed");
  }
}
