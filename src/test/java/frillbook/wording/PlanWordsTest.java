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

/** A bag with two pockets, of a cloth that was left without words. */
class PlanWordsTest {
  private static final NamedValues PLAN =
      new NamedValues(
          Map.of("pocket_count", 2.0, "sewn_ok", 1.0, "priced_ok", 0.0, "shut", "Zip"),
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

  private static Map<String, Sentence> texts() {
    Map<String, Sentence> texts = new LinkedHashMap<>();
    texts.put("pockets", POCKETS);
    texts.put("twice", TWICE);
    return texts;
  }

  private static Map<String, Object> inputs() {
    Map<String, Object> inputs = new HashMap<>();
    inputs.put("cloth_words", null);
    return inputs;
  }

  private final PlanWords words = new PlanWords(texts(), LengthUnit.CM, inputs(), PLAN);

  @Test
  void linesOfWordsAreAddedToThePlan() {
    NamedValues complete = PlanWords.complete(texts(), LengthUnit.CM, inputs(), PLAN);
    assertEquals("2 pockets, cm", complete.lines().get("pockets"));
    assertEquals("2 pockets, cm!", complete.lines().get("twice"));
    assertEquals(2.0, complete.lines().get("pocket_count"));
    assertEquals(PLAN.columns(), complete.columns());
  }

  @Test
  void whatThePlanSaysAlreadyIsNotSaidAnew() {
    NamedValues said = new NamedValues(Map.of("pockets", "none"), Map.of());
    PlanWords kept = new PlanWords(texts(), LengthUnit.CM, inputs(), said);
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
    assertEquals(Optional.of(""), words.value("cloth_words"));
    assertEquals(Optional.empty(), words.value("no_such_line"));
  }

  @Test
  void aWordingIsChosenByAWordInAnyCaseAndByANumber() {
    Wording other = new Wording(List.of(new Wording.Words("else")));
    Wording found = new Wording(List.of(new Wording.Words("found")));
    for (var each : Map.of("shut", (Object) "zip", "pocket_count", 2.0).entrySet()) {
      var cases = List.of(new Wording.Case(each.getValue(), found));
      assertEquals("found", chosen(each.getKey(), cases, other));
    }
    assertEquals("else", chosen("shut", List.of(new Wording.Case("tie", found)), other));
    assertEquals("else", chosen("pocket_count", List.of(new Wording.Case(3.0, found)), other));
  }

  private String chosen(String name, List<Wording.Case> cases, Wording other) {
    return words.say(sentence(Optional.empty(), new Wording.Choice(name, cases, other)));
  }
}
