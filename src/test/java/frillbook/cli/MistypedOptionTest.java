package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MistypedOptionTest {
  private static final String PLAN_HELP = "'frillbook plan --help' says what can be given.";

  @Test
  void withoutACommandTheHelpIsNamed() {
    assertEquals(
        Ran.refusal(
            2, "Missing required subcommand.", "'frillbook --help' says what can be given."),
        Ran.run());
  }

  @Test
  void aMistypedCommandIsAnsweredWithTheNearest() {
    assertEquals(
        Ran.refusal(
            2,
            "Unmatched argument at index 0: 'plam'.",
            "Did you mean: frillbook plan?",
            "'frillbook --help' says what can be given."),
        Ran.run("plam"));
  }

  @Test
  void aMistypedOptionIsAnsweredWithTheNearest() {
    assertEquals(
        Ran.refusal(
            2, "Unknown option: '--diametr=5'.", "Possible solutions: --diameter", PLAN_HELP),
        Ran.run("plan", "--diametr=5"));
  }

  @Test
  void anUnknownUnitIsAnsweredWithTheTwoThereAre() {
    assertEquals(
        Ran.refusal(
            2, "Invalid value for option '--unit': found \"mm\". Write inch or cm.", PLAN_HELP),
        Ran.run("plan", "--unit", "mm"));
  }

  @Test
  void anUnknownPaperIsAnsweredWithTheTwoThereAre() {
    assertEquals(
        Ran.refusal(
            2,
            "Invalid value for option '--paper': found \"a5\". Write a4 or letter.",
            "'frillbook make --help' says what can be given."),
        Ran.run("make", "--paper", "a5"));
  }

  @Test
  void anOptionGivenTwiceIsRefused() {
    assertEquals(
        Ran.refusal(2, "option '--diameter' (LENGTH) should be specified only once.", PLAN_HELP),
        Ran.run("plan", "--diameter", "18", "--diameter", "20"));
  }

  @Test
  void anOptionWithoutItsValueIsRefused() {
    assertEquals(
        Ran.refusal(2, "Missing required parameter for option '--set' (NAME=VALUE).", PLAN_HELP),
        Ran.run("plan", "--set"));
  }

  @Test
  void unitsMayBeWrittenInCapitals() {
    assertEquals(Ran.run("inputs", "--unit", "cm"), Ran.run("inputs", "--unit", "CM"));
  }
}
