package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.template.Form;
import frillbook.template.SentenceTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.PlanWords;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Sentences as they are written, what they say, and what is told where they cannot be read. */
final class WordingTest {
  private static final LengthUnit UNIT = LengthUnit.CM;

  private static final String VALUES =
      """
        - {input: flags, label: Flags, part: p, kind: count, unit: flags, default: 3, from: 1, to: 9, prompt: P.}
        - {input: way, label: Way, part: p, kind: choice, choices: {up: up, on_the_side: on the side}, default: up, prompt: P.}
        - {input: lined, label: Lined, part: p, kind: choice, choices: {yes: of course, no: not now}, default: no, prompt: P.}
        - {input: note_words, label: Note, part: p, kind: text, default: "", prompt: P.}
        - {line: tape, label: T, unit: "{unit}", format: length, guard: none, formula: flags/8, note: N.}
        - {line: is_long, label: L, unit: "-", format: flag, guard: none, formula: 1, note: N.}
        - {table: rows, rows: 2, guard: none, columns: [
            {column: row_no, label: R, unit: "-", format: count, formula: "{n}", note: N.}]}
      """;

  private static String sentence(String text) {
    return VALUES + "  - sentence: '" + text + "'\n    guard: none\n";
  }

  private static String said(String text, Map<String, Object> values) {
    WorkbookTemplate read = Written.read(sentence(text));
    PlanWords words =
        new PlanWords(
            Form.of(read).vocabulary(), UNIT, values, new NamedValues(Map.of(), Map.of()));
    return words.say(read.rows(SentenceTemplate.class).get(0).sentence());
  }

  private static void told(String text, String... messages) {
    assertEquals(List.of(messages), Written.mistakes(sentence(text)));
  }

  @Test
  void valuesAreSaidWithinWords() {
    assertEquals(
        "So 2.38 cm, up.",
        said("So {tape, number, 0.##} {unit}, {way}.", Map.of("tape", 2.375, "way", "up")));
  }

  @Test
  void oneIsSaidOtherwiseThanMany() {
    String text = "{flags, plural, =0 {none} one {# flag} other {# flags}}";
    assertEquals("none", said(text, Map.of("flags", 0.0)));
    assertEquals("1 flag", said(text, Map.of("flags", 1.0)));
    assertEquals("7 flags", said(text, Map.of("flags", 7.0)));
  }

  /** As ICU's MessageFormat has it: # belongs to the innermost plural, whatever lies between. */
  @Test
  void aChoiceWithinAPluralSaysItsNumber() {
    String text = "{flags, plural, =0 {none} other {{way, select, up {# up} other {# down}}}}";
    assertEquals("3 up", said(text, Map.of("flags", 3.0, "way", "up")));
    assertEquals("3 down", said(text, Map.of("flags", 3.0, "way", "down")));
  }

  @Test
  void moneyNeedsItsPlaces() {
    told(
        "For {tape, number, currency}.",
        "a.yaml:13:33: the unknown name money_places; expected the name of an input or a line;"
            + " correct it or add what it names");
  }

  /** What a check says is a sentence like any other. */
  @Test
  void theMessageOfACheckNamesWhatThereIs() {
    String check =
        "  - {check: all_fly, label: F, level: look_again, guard: none, formula: flags<3, message: '%s'}\n";
    assertEquals(
        List.of(
            "a.yaml:13:103: the unknown name flagz; expected the name of an input or a line; correct"
                + " it or add what it names (did you mean flags?)"),
        Written.mistakes(VALUES + check.formatted("There are {flagz, number, 0}.")));
    WorkbookTemplate read = Written.read(VALUES + check.formatted("{flags, number, 0} are up."));
    assertEquals(List.of("flags"), List.copyOf(read.checks().get(0).message().names().keySet()));
  }

  @Test
  void aChoiceIsToldByItsCodeAndSaidByItsWord() {
    String text = "{way, select, on_the_side {beside, {way}} other {above}}";
    assertEquals("beside, on the side", said(text, Map.of("way", "on_the_side")));
    assertEquals("above", said(text, Map.of("way", "up")));
  }

  @Test
  void yesAndNoMayBeTheCodesOfAChoice() {
    String text = "{lined, select, yes {lined} other {bare}}";
    assertEquals("lined", said(text, Map.of("lined", "yes")));
    assertEquals("bare", said(text, Map.of("lined", "no")));
  }

  @Test
  void flagsAndBlankWordsDecideToo() {
    String text = "a{is_long, select, yes { b} other {}}{note_words, select, blank {} other { c}}";
    assertEquals("a b", said(text, Map.of("is_long", 1.0, "note_words", "")));
    assertEquals("a c", said(text, Map.of("is_long", 0.0, "note_words", "x")));
  }

  @Test
  void choicesMayStandWithinChoices() {
    String text =
        "{flags, plural, =0 {} other {# of {tape, number, 0.0}{is_long, select, yes {, } other {}}}}!";
    assertEquals("2 of 4.0, !", said(text, Map.of("flags", 2.0, "tape", 4.0, "is_long", 1.0)));
  }

  @Test
  void anUnknownNameIsTold() {
    told(
        "So {tap, number, 0.#}",
        "a.yaml:13:20: the unknown name tap; expected the name of an input or a line; correct it"
            + " or add what it names (did you mean tape?)");
  }

  @Test
  void aColumnIsNoSingleValue() {
    told(
        "So {row_no, number}",
        "a.yaml:13:20: row_no, which is not a single value; expected the name of an input or a line;"
            + " correct it or add what it names (did you mean row_no?)");
  }

  @Test
  void aNumberNeedsAPattern() {
    told(
        "So {tape}",
        "a.yaml:13:20: the number tape without a pattern; expected how a number is said; write"
            + " {tape, number, 0.##} or the like");
  }

  @Test
  void wordsAreNoNumber() {
    told(
        "So {way, number}",
        "a.yaml:13:20: the words way said as a number; expected a number; write {way}");
  }

  @Test
  void aCodeThatCannotBeChosenIsTold() {
    told(
        "{way, select, down {a} other {b}}",
        "a.yaml:13:17: the case down of way; expected one of up, on_the_side; correct it");
  }

  @Test
  void aChoiceNeedsAnOther() {
    told(
        "{way, select, up {a}}",
        "a.yaml:13:36: a choice by way without other; expected what is said otherwise; add other"
            + " {…}");
  }

  @Test
  void anOddPatternIsTold() {
    told(
        "{tape, number, #,##0}",
        "a.yaml:13:29: the number pattern #,##0; expected 0, 0.##, 0.00, 0.#% or currency; write"
            + " one like them");
  }

  @Test
  void anUnknownKindOfValueIsTold() {
    told(
        "{tape, date} then",
        "a.yaml:13:27: {tape, date}; expected number, tape, long_tape, weight, plural or select behind the name; write"
            + " {tape} or one of these");
  }

  @Test
  void bracesMustCloseAndBeOpened() {
    assertTrue(
        Written.mistakes(sentence("So {flags, number"))
            .toString()
            .contains("a { that is not closed"));
    assertTrue(
        Written.mistakes(sentence("So } what")).toString().contains("a } that closes nothing"));
  }
}
