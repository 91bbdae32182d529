package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.reading.PackagedTemplates;
import frillbook.template.InputTemplate;
import java.util.List;
import org.junit.jupiter.api.Test;

class InputsCommandTest {
  @Test
  void everyInputOfTheTemplateIsListedInItsOrder() {
    List<String> expected =
        PackagedTemplates.template().inputs().stream().map(InputTemplate::name).toList();
    List<String> listed =
        Ran.run("inputs").out().lines().skip(1).map(line -> line.split(" +")[0]).toList();
    assertTrue(listed.size() > 30, listed.size() + " inputs");
    assertEquals(expected, listed);
  }

  @Test
  void aLengthIsListedInInches() {
    assertEquals(
        List.of("diameter", "in", "18", "4 to 60"), cells("diameter", "inputs", "--unit=inch"));
  }

  @Test
  void aLengthIsListedInCentimetres() {
    assertEquals(
        List.of("diameter", "cm", "45", "10 to 150"), cells("diameter", "inputs", "--unit=cm"));
  }

  @Test
  void aShareIsListedInPerCent() {
    assertEquals(List.of("draw_in", "%", "4", "0 to 15"), cells("draw_in", "inputs"));
  }

  @Test
  void aChoiceIsListedWithItsWords() {
    assertEquals(
        List.of("grain", "-", "crosswise", "crosswise, lengthwise, bias"),
        cells("grain", "inputs"));
  }

  @Test
  void theCurrencyIsListedAsItIsAskedFor() {
    assertEquals(
        List.of("currency_code", "-", "GBP", "ISO 4217 codes"),
        cells("currency_code", "inputs", "--currency=gbp"));
  }

  @Test
  void wordsAreListedWithTheirLengthAndALongDefaultIsCutShort() {
    assertEquals(
        List.of("care_words", "-", "Shake out and…", "up to 200 characters"),
        cells("care_words", "inputs"));
  }

  @Test
  void theListIsTheResultAndNothingElseIsSaid() {
    Ran ran = Ran.run("inputs");
    assertEquals(new Ran(0, ran.out(), ""), ran);
  }

  /** The first four cells of a row, which stand two blanks apart or more. */
  private static List<String> cells(String name, String... args) {
    return Ran.run(args)
        .out()
        .lines()
        .filter(line -> line.startsWith(name + " "))
        .flatMap(line -> List.of(line.split(" {2,}")).subList(0, 4).stream())
        .toList();
  }
}
