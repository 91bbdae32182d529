package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MistypedOptionTest {
  private static final String PLAN_HELP = "'frillbook plan --help' lists what can be given.";

  @Test
  void withoutACommandTheHelpIsNamed() {
    assertEquals(
        Ran.refusal(
            2,
            "A command is missing: make, plan, client, inputs, templates, demo.",
            "'frillbook --help' lists what can be given."),
        Ran.run());
  }

  @Test
  void aMistypedCommandIsAnsweredWithTheNearest() {
    assertEquals(
        Ran.refusal(
            2,
            "There is no command plam. Did you mean plan?",
            "'frillbook --help' lists what can be given."),
        Ran.run("plam"));
  }

  @Test
  void aMistypedOptionIsAnsweredWithTheNearest() {
    assertEquals(
        Ran.refusal(2, "There is no option --diametr. Did you mean --diameter?", PLAN_HELP),
        Ran.run("plan", "--diametr=5"));
  }

  @Test
  void anUnknownUnitIsAnsweredWithTheTwoThereAre() {
    assertEquals(
        Ran.refusal(2, "--unit: found \"mm\". Write inch or cm.", PLAN_HELP),
        Ran.run("plan", "--unit", "mm"));
  }

  @Test
  void anUnknownPaperIsAnsweredWithTheTwoThereAre() {
    assertEquals(
        Ran.refusal(
            2,
            "--paper: found \"a5\". Write a4 or letter.",
            "'frillbook make --help' lists what can be given."),
        Ran.run("make", "--paper", "a5"));
  }

  @Test
  void anOptionGivenTwiceIsRefused() {
    assertEquals(
        Ran.refusal(2, "--diameter is given twice. Give it once.", PLAN_HELP),
        Ran.run("plan", "--diameter", "18", "--diameter", "20"));
  }

  @Test
  void anOptionWithoutItsValueIsRefused() {
    assertEquals(
        Ran.refusal(2, "--input needs a value: --input NAME=VALUE.", PLAN_HELP),
        Ran.run("plan", "--input"));
  }

  @ParameterizedTest
  @CsvSource({
    "--set,--input",
    "--set=grain=bias,--input",
    "--color=red,--input frill_fabric_words",
    "--colour=red,--input frill_fabric_words",
    "--size=18,--diameter"
  })
  void anOptionUnderAnotherNameIsAnsweredWithOurs(String typed, String ours) {
    String named = typed.split("=")[0];
    assertEquals(
        Ran.refusal(2, "There is no option " + named + ". Did you mean " + ours + "?", PLAN_HELP),
        Ran.run("plan", typed));
  }

  /** A command that takes no inputs cannot mean one. */
  @Test
  void onlyAnOptionOfThatCommandIsMeant() {
    assertEquals(
        Ran.refusal(
            2, "There is no option --set.", "'frillbook demo --help' lists what can be given."),
        Ran.run("demo", "--set", "grain=bias"));
  }

  @Test
  void aMissingFolderIsAskedFor() {
    assertEquals(
        Ran.refusal(
            2,
            "DIR is missing: The folder to write. It must not exist yet, or be empty.",
            "'frillbook templates --help' lists what can be given."),
        Ran.run("templates"));
  }

  @ParameterizedTest
  @CsvSource({"in,inch", "inches,inch", "IN,inch", "metric,cm", "centimetres,cm"})
  void unitsHaveOtherNames(String typed, String ours) {
    assertEquals(Ran.run("inputs", "--unit", ours), Ran.run("inputs", "--unit", typed));
  }

  @Test
  void unitsMayBeWrittenInCapitals() {
    assertEquals(Ran.run("inputs", "--unit", "cm"), Ran.run("inputs", "--unit", "CM"));
  }
}
