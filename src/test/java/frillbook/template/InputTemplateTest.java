package frillbook.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Elsewhere;
import frillbook.measure.LengthUnit;
import frillbook.reading.Written;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated("the language holds for the whole process")
final class InputTemplateTest {
  private static WorkbookTemplate read(String keys) {
    return Written.read(
        "  - {input: size_of_it, label: Finished diameter, part: size, prompt: P., "
            + keys
            + "}\n");
  }

  private static InputTemplate input(String keys) {
    return read(keys).inputs().get(0);
  }

  private static String refusal(String keys, LengthUnit unit) {
    WorkbookTemplate read = read(keys);
    return read.inputs().get(0).refusal(read.phrases(), unit);
  }

  @Test
  void aLengthIsRefusedInTheWorkbooksUnit() {
    String keys =
        "kind: length, inch: {default: 18, from: 4, to: 60}, cm: {default: 45, from: 10.5, to: 150}";
    assertEquals(
        "“Finished diameter” must be a number from 4 to 60 in.", refusal(keys, LengthUnit.INCH));
    assertEquals(
        "“Finished diameter” must be a number from 10.5 to 150 cm.", refusal(keys, LengthUnit.CM));
  }

  /** A limit off the tape keeps its decimals. */
  @Test
  void limitsInInchesAreSaidAsOnATape() {
    String keys =
        "kind: length, inch: {default: 0.75, from: 0.125, to: 6.1}, cm: {default: 2, from: 0.32, to: 15}";
    assertEquals(
        "“Finished diameter” must be a number from 1/8 to 6.1 in.", refusal(keys, LengthUnit.INCH));
    assertEquals(
        "“Finished diameter” must be a number from 0.32 to 15 cm.", refusal(keys, LengthUnit.CM));
  }

  @Test
  void aCountIsRefusedAsAWholeNumber() {
    assertEquals(
        "“Finished diameter” must be a whole number from 1 to 50.",
        refusal("kind: count, unit: discs, default: 1, from: 1, to: 50", LengthUnit.INCH));
  }

  @Test
  void aShareIsRefusedInPerCent() {
    assertEquals(
        "“Finished diameter” must be a number from 0% to 7%.",
        refusal("kind: percent, default: 0.05, from: 0, to: 0.07", LengthUnit.INCH));
  }

  @Test
  void aNumberIsRefusedWithItsOwnUnit() {
    String keys = "kind: number, unit: times, default: 2, from: 1, to: 6";
    assertEquals(
        "“Finished diameter” must be a number from 1 to 6 times.", refusal(keys, LengthUnit.CM));
  }

  @Test
  void aNumberMayHaveTwoRanges() {
    InputTemplate input =
        input(
            "kind: number, unit: \"-\", inch: {default: 139, from: 50, to: 400},"
                + " cm: {default: 5000, from: 2000, to: 10000}");
    assertEquals(139.0, input.preset(LengthUnit.INCH));
    assertEquals(5000.0, input.preset(LengthUnit.CM));
    assertFalse(input.accepts(139.0, LengthUnit.CM));
  }

  @Test
  void aChoiceIsRefusedWithItsWords() {
    assertEquals(
        "“Finished diameter” must be one of: at 45°, crosswise.",
        refusal(
            "kind: choice, choices: {bias: at 45°, crosswise: crosswise}, default: bias",
            LengthUnit.CM));
  }

  @Test
  void aChoiceIsKnownByItsWordAndByThoseItHadBefore() {
    InputTemplate input =
        input(
            "kind: choice, default: bias,"
                + " choices: {bias: {word: at 45°, was: [bias, aslant]}, crosswise: crosswise}");
    assertEquals(Optional.of("bias"), input.codeOf("At 45°"));
    assertEquals(Optional.of("bias"), input.codeOf("Aslant"));
    assertEquals(Optional.of("crosswise"), input.codeOf("crosswise"));
    assertEquals(Optional.empty(), input.codeOf("lengthwise"));
  }

  @Test
  void aChoiceAcceptsItsCodes() {
    InputTemplate input = input("kind: choice, default: bias, choices: {bias: at 45°}");
    assertTrue(input.accepts("bias", LengthUnit.CM));
    assertFalse(input.accepts("at 45°", LengthUnit.CM));
  }

  @Test
  void theSentenceIsTheSameInEveryLocale() {
    String input = "kind: number, unit: times, default: 2, from: 0.5, to: 12345.5";
    assertEquals(
        "“Finished diameter” must be a number from 0.5 to 12345.5 times.",
        Elsewhere.in("de-DE", () -> refusal(input, LengthUnit.CM)));
  }

  @Test
  void bothEndsOfTheRangeAreAcceptedAndNothingBeyond() {
    InputTemplate input = input("kind: number, unit: times, default: 2, from: 1, to: 6");
    assertTrue(input.accepts(1.0, LengthUnit.CM));
    assertTrue(input.accepts(6.0, LengthUnit.CM));
    assertFalse(input.accepts(6.0000001, LengthUnit.CM));
    assertFalse(input.accepts(Double.NaN, LengthUnit.CM));
    assertFalse(input.accepts("2", LengthUnit.CM));
  }

  @Test
  void aNumberThatMayBeLeftOutIsBlankOrInItsRange() {
    InputTemplate input = input("kind: number, optional: true, unit: times, from: 1, to: 6");
    assertEquals("", input.preset(LengthUnit.CM));
    assertTrue(input.accepts("", LengthUnit.CM));
    assertTrue(input.accepts(6.0, LengthUnit.CM));
    assertFalse(input.accepts("2", LengthUnit.CM));
    assertFalse(input.accepts(7.0, LengthUnit.CM));
  }

  @Test
  void aNumberThatMayBeLeftOutMayHaveADefaultAllTheSame() {
    InputTemplate input =
        input("kind: number, optional: true, unit: times, default: -0.5, from: -1, to: 6");
    assertEquals(-.5, input.preset(LengthUnit.CM));
    assertTrue(input.accepts("", LengthUnit.CM));
  }

  @Test
  void anyOtherNumberMustNotBeBlank() {
    InputTemplate input = input("kind: number, unit: times, default: 2, from: 1, to: 6");
    assertFalse(input.accepts("", LengthUnit.CM));
  }

  @Test
  void aCountAcceptsNoFraction() {
    InputTemplate input = input("kind: count, unit: discs, default: 1, from: 1, to: 50");
    assertTrue(input.accepts(2.0, LengthUnit.CM));
    assertFalse(input.accepts(2.5, LengthUnit.CM));
  }
}
