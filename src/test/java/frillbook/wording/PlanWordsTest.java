package frillbook.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A bag with two pockets, of a fabric that was left without words. */
class PlanWordsTest {
  private static final NamedValues PLAN =
      new NamedValues(
          Map.of("pocket_count", 2.0, "sewn_ok", 1.0, "priced_ok", 0.0, "shut", "zip"),
          Map.of("strap_length", List.of(24.0)));

  private static Sentence sentence(Optional<String> guard, Wording.Part... parts) {
    return new Sentence(new Wording(List.of(parts)), guard);
  }

  private static final Sentence POCKETS =
      sentence(
          Optional.of("sewn_ok"),
          new Wording.Number("pocket_count", NumberStyle.WHOLE),
          new Wording.Words(" pockets, {unit}"));

  /** Speaks of a line of words that stands before it. */
  private static final Sentence TWICE =
      sentence(Optional.empty(), new Wording.Text("pockets"), new Wording.Words("!"));

  private static final List<CodeWord> SHUTS =
      List.of(new CodeWord("zip", "a zip"), new CodeWord("tie", "two ties"));

  private static Vocabulary vocabulary() {
    Map<String, Sentence> texts = new LinkedHashMap<>();
    texts.put("pockets", POCKETS);
    texts.put("twice", TWICE);
    return new Vocabulary(
        texts,
        Map.of(),
        new CodeWords(Map.of("shut", SHUTS, "shuts", SHUTS)),
        Map.of("is_lined", new CodeFlag("lining", "silk")));
  }

  private static Map<String, Object> inputs() {
    Map<String, Object> inputs = new HashMap<>();
    inputs.put("fabric_words", null);
    inputs.put("lining", "silk");
    return inputs;
  }

  private final PlanWords words = new PlanWords(vocabulary(), LengthUnit.CM, inputs(), PLAN);

  @Test
  void linesOfWordsAreAddedToThePlan() {
    NamedValues complete = PlanWords.complete(vocabulary(), LengthUnit.CM, inputs(), PLAN);
    assertEquals("2 pockets, cm", complete.lines().get("pockets"));
    assertEquals("2 pockets, cm!", complete.lines().get("twice"));
    assertEquals(2.0, complete.lines().get("pocket_count"));
    assertEquals(PLAN.columns(), complete.columns());
  }

  @Test
  void whatThePlanSaysAlreadyIsNotSaidAnew() {
    NamedValues said = new NamedValues(Map.of("pockets", "none"), Map.of());
    PlanWords kept = new PlanWords(vocabulary(), LengthUnit.CM, inputs(), said);
    assertEquals(Optional.of("none"), kept.value("pockets"));
    assertEquals(Optional.of("none!"), kept.value("twice"));
  }

  @Test
  void aSentenceIsSaidWhileItsGuardIsOne() {
    assertEquals("2 pockets, cm", words.say(POCKETS));
    assertEquals("", words.say(new Sentence(POCKETS.wording(), Optional.of("priced_ok"))));
    assertEquals("", words.say(new Sentence(POCKETS.wording(), Optional.of("no_such_line"))));
  }

  @Test
  void aGuardHoldsWhileItsLineIsOne() {
    assertTrue(words.holds(Optional.of("sewn_ok")));
    assertFalse(words.holds(Optional.of("priced_ok")));
    assertTrue(words.holds(Optional.empty()));
  }

  @Test
  void anEmptiedCellIsAnEmptyText() {
    assertEquals(Optional.of(""), words.value("fabric_words"));
    assertEquals(Optional.empty(), words.value("no_such_line"));
  }

  @Test
  void aWordingIsChosenByACodeAndByANumber() {
    Wording other = new Wording(List.of(new Wording.Words("else")));
    Wording found = new Wording(List.of(new Wording.Words("found")));
    for (var each : Map.of("shut", (Object) "zip", "pocket_count", 2.0).entrySet()) {
      var cases = List.of(new Wording.Case(each.getValue(), found));
      assertEquals("found", chosen(each.getKey(), cases, other));
    }
    assertEquals("else", chosen("shut", List.of(new Wording.Case("tie", found)), other));
    assertEquals("else", chosen("pocket_count", List.of(new Wording.Case(3.0, found)), other));
  }

  @Test
  void aCodeIsShownAndSaidByItsWord() {
    assertEquals(Optional.of("zip"), words.value("shut"));
    assertEquals(Optional.of("a zip"), words.shown("shut"));
    assertEquals("a zip", words.say(sentence(Optional.empty(), new Wording.Text("shut"))));
  }

  @Test
  void aFlagIsOneWhileItsInputHasTheCode() {
    assertEquals(Optional.of(1.0), words.value("is_lined"));
    assertTrue(words.holds(Optional.of("is_lined")));
    NamedValues bare =
        PlanWords.complete(vocabulary(), LengthUnit.CM, Map.of("lining", "none"), PLAN);
    assertEquals(0.0, bare.lines().get("is_lined"));
  }

  @Test
  void cellsShowWordsAndAreReadBackAsCodes() {
    CodeWords codes = vocabulary().words();
    NamedValues plan = new NamedValues(Map.of("shut", "tie"), Map.of("shuts", List.of("zip", "")));
    NamedValues shown = codes.shown(plan);
    assertEquals(Map.of("shut", "two ties"), shown.lines());
    assertEquals(Map.of("shuts", List.of("a zip", "")), shown.columns());
    assertEquals(plan, codes.known(shown));
  }

  private String chosen(String name, List<Wording.Case> cases, Wording other) {
    return words.say(sentence(Optional.empty(), new Wording.Choice(name, cases, other)));
  }

  @Test
  void whatIsKnownByACodeIsTold() {
    assertTrue(vocabulary().words().has("shut"));
    assertFalse(vocabulary().words().has("pocket_count"));
  }

  /** Beside a column of the row stands a line of the plan. */
  @Test
  void everyRowOfATableIsSaidInItsOwnWords() {
    NamedValues plan =
        new NamedValues(
            Map.of("pocket_count", 2.0),
            Map.of("strap_length", List.of(24.0, 30.0), "shuts", List.of("zip", "none")));
    Wording row =
        new Wording(
            List.of(
                new Wording.Number("strap_length", NumberStyle.WHOLE),
                new Wording.Words(", "),
                new Wording.Text("shuts"),
                new Wording.Words(" of "),
                new Wording.Number("pocket_count", NumberStyle.WHOLE)));
    Vocabulary rows =
        new Vocabulary(
            Map.of(),
            Map.of("row_words", new RowWording(row, "strap_length")),
            vocabulary().words(),
            Map.of());
    PlanWords said = new PlanWords(rows, LengthUnit.CM, Map.of(), plan);
    assertEquals(Optional.of(List.of("24, a zip of 2", "30, none of 2")), said.column("row_words"));
    assertEquals(Optional.of(List.of("a zip", "none")), said.column("shuts"));
    assertEquals(Optional.empty(), said.column("no_such_column"));
    assertEquals(Optional.empty(), said.value("row_words"));
  }
}
