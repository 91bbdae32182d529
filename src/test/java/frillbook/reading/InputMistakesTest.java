package frillbook.reading;

import static frillbook.reading.Written.line;
import static frillbook.reading.Written.told;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of an input that cannot be filled in, word for word. */
final class InputMistakesTest {
  private static final String CHECKED = "  - input_checks: [words]\n";

  private static String input(String name, String keys) {
    return "  - {input: " + name + ", label: L, kind: text, prompt: P., " + keys + "}\n";
  }

  @Test
  void anInputWithoutAPartIsTold() {
    told(
        input("maker_name", "unit: \"-\""),
        "a.yaml:5:5: input maker_name without part; expected the key part; add part: …");
  }

  @Test
  void aPartThatIsNotCheckedIsTold() {
    told(
        input("maker_name", "part: word") + input("care_words", "part: words") + CHECKED,
        "a.yaml:5:5: the part word of input maker_name; expected one of words;"
            + " correct it or add it to input_checks (did you mean words?)");
  }

  @Test
  void aPartWithoutInputsIsTold() {
    told(
        input("maker_name", "part: words") + "  - input_checks: [words, money]\n",
        "a.yaml:6:5: the part money, which no input belongs to;"
            + " expected each part of the inputs once; take it out of input_checks");
  }

  @Test
  void aPartThatIsListedTwiceIsTold() {
    told(
        input("maker_name", "part: words") + "  - input_checks: [words, words]\n",
        "a.yaml:6:5: the part words a second time;"
            + " expected each part of the inputs once; take it out of input_checks");
  }

  @Test
  void anInputWhoseUseHangsOnItsOwnFaultIsACircle() {
    told(
        input("maker_name", "part: words, used: sound=1")
            + line("sound", "SUM(words_fault)+1")
            + CHECKED,
        "a.yaml:5:78: a circle: words_fault needs sound needs words_fault;"
            + " expected values that do not need themselves; break the circle");
  }

  @Test
  void aDefaultOutsideItsRangeIsTold() {
    told(
        "  - {input: size_of_it, label: L, part: p, kind: length, prompt: P.,\n"
            + "     inch: {default: 70, from: 4, to: 60}, cm: {default: 45, from: 10, to: 150}}\n",
        "a.yaml:6:12: the default 70.0; expected a value from 4.0 to 60.0;"
            + " correct default, from or to");
  }

  @Test
  void aDefaultThatIsNoChoiceIsTold() {
    told(
        "  - {input: grain, label: L, part: p, kind: choice, prompt: P., choices: {a: one, b: two}, default: c}\n",
        "a.yaml:5:101: the default c; expected one of a, b; correct the input's choices");
  }

  private static final String CURRENCY =
      """
        - input: currency_code
          label: L
          part: shape
          kind: currency
          inch: USD
          cm: %s
          prompt: P.
      """;

  @Test
  void aCurrencyThatIsNoneIsTold() {
    told(
        CURRENCY.formatted("XAU"),
        "a.yaml:10:9: the currency XAU; expected an ISO 4217 code such as EUR, GBP, JPY or USD;"
            + " correct it");
  }

  @Test
  void theCurrencyIsNotFilledInWhenTheWorkbookIsMade() {
    told(
        CURRENCY.formatted("EUR") + "  - note: in {currency_code}\n",
        "a.yaml:12:14: the unknown placeholder {currency_code};"
            + " expected {unit}, {long_unit} or a variable of each; correct or remove it");
  }

  private static String number(String preset) {
    return """
      - input: ring_size
        label: L
        part: p
        kind: number
        unit: x
        prompt: P.
        default: %s
        from: 0
        to: 60
    """
        .formatted(preset);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2,5", "NaN", "Infinity", "1d", "0x1p3", "1e999", "1_000"})
  void aDefaultThatIsNoNumberIsTold(String written) {
    told(
        number(written),
        "a.yaml:11:14: " + written + "; expected a number; write digits with a decimal point");
  }

  @Test
  void aDecimalCommaWithinBracesIsToldForEachNumber() {
    told(
        "  - {input: ring_size, label: L, part: p, kind: length, prompt: P.,\n"
            + "     inch: {default: 2,5, from: 1,5, to: 60}, cm: {default: 45, from: 10, to: 150}}\n",
        "a.yaml:6:24: a comma before 5; expected a number;"
            + " write a decimal point: 2.5 and not 2,5",
        "a.yaml:6:35: a comma before 5; expected a number;"
            + " write a decimal point: 2.5 and not 2,5");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2", "2.5", ".5", "5.", "+5", "25e-1"})
  void aNumberIsRead(String written) {
    Written.read(number(written));
  }
}
