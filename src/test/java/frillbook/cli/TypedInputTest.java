package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedInputTest {
  private static final String FORMS = " Write it like 45cm, 18 in, 1/2in, 15 3/4 in, 0.5m.";

  @Test
  void inchesAreTurnedIntoTheCentimetresOfTheBrief() {
    // 25.4 mm to the inch exactly (NIST SP 811): 18 in is 45.72 cm.
    Ran ran = Ran.run("plan", "--json", "--unit", "cm", "--diameter", "18in");
    assertEquals(45.72, ran.json().at("/inputs/diameter").doubleValue(), 1e-12, ran.err());
  }

  @Test
  void aLengthWithoutAUnitIsInTheUnitOfTheBrief() {
    Ran ran = Ran.run("plan", "--json", "--unit", "cm", "--diameter", "40");
    assertEquals(40, ran.json().at("/inputs/diameter").doubleValue(), ran.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"6%", "6 %", "0.06", ".06", " 6% "})
  void aShareIsWrittenInPerCentOrAsAFraction(String typed) {
    Ran ran = Ran.run("plan", "--json", "--input", "draw_in=" + typed);
    assertEquals(0.06, ran.json().at("/inputs/draw_in").doubleValue(), ran.err());
  }

  @ParameterizedTest
  @CsvSource({
    "grain,LENGTHWISE,lengthwise",
    "join_finish,French,french",
    "edge_finish,narrow_hem,narrow_hem",
    "edge_finish,Narrow Hem,narrow_hem",
    "edge_finish,narrow-hem,narrow_hem"
  })
  void aChoiceIsTakenByItsCodeAndByItsWordInAnyCase(String name, String typed, String code) {
    Ran ran = Ran.run("plan", "--json", "--input", name + "=" + typed);
    assertEquals(code, ran.json().at("/inputs/" + name).textValue(), ran.err());
  }

  /** British and American, of the trade and of older plans. */
  @ParameterizedTest
  @CsvSource({
    "grain,crossgrain,crosswise",
    "grain,cross-grain,crosswise",
    "grain,along,lengthwise",
    "edge_finish,serged,overlocked",
    "join_finish,Serged,overlocked",
    "join_line,mitered,diagonal",
    "back_style,zip,zipped_halves",
    "back_style,back zip,zipped_halves",
    "row_style,circles,rings"
  })
  void aChoiceIsTakenByWhatOthersCallIt(String name, String typed, String code) {
    Ran ran = Ran.run("plan", "--json", "--input", name + "=" + typed);
    assertEquals(code, ran.json().at("/inputs/" + name).textValue(), ran.err());
  }

  @ParameterizedTest
  @CsvSource({
    "wage,hourly_rate,30,30",
    "tax,tax_rate,19%,0.19",
    "vat,tax_rate,19%,0.19",
    "selvedge,selvage,1 in,1",
    "Ring-Spacing,ring_spacing,1,1",
    "spool_length,reel_length,200,200"
  })
  void anInputIsTakenByWhatOthersCallIt(String typed, String name, String value, double expected) {
    Ran ran = Ran.run("plan", "--json", "--input", typed + "=" + value);
    assertEquals(expected, ran.json().at("/inputs/" + name).doubleValue(), 1e-12, ran.err());
  }

  @ParameterizedTest
  @CsvSource({
    "rings,ring_spacing or row_style",
    "zip,back_style or price_zip",
    "seam,join_finish or join_allowance or join_line or seam_allowance"
  })
  void aNameForSeveralInputsIsAnsweredWithAllOfThem(String typed, String meant) {
    assertEquals(
        Ran.refusal(
            2,
            "There is no input named \""
                + typed
                + "\". Did you mean "
                + meant
                + "? 'frillbook inputs' lists all."),
        Ran.run("plan", "--input", typed + "=1"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2", "2.0", "200%", "200 %"})
  void fullnessIsWrittenInTimesOrInPerCent(String typed) {
    Ran ran = Ran.run("plan", "--json", "--fullness", typed);
    assertEquals(2, ran.json().at("/inputs/fullness").doubleValue(), ran.err());
  }

  @ParameterizedTest
  @CsvSource({"18 inches,18", "17½,17.5", "17 1/2,17.5", "1.5',18", "1½ feet,18"})
  void aDiameterIsWrittenAsPeopleWriteIt(String typed, double inches) {
    Ran ran = Ran.run("plan", "--json", "--diameter", typed);
    assertEquals(inches, ran.json().at("/inputs/diameter").doubleValue(), 1e-12, ran.err());
  }

  @Test
  void aChoiceThatIsNoneIsAnsweredWithTheCodesAndTheNearest() {
    assertEquals(
        Ran.refusal(
            2,
            "back_style: found \"zipped halvs\". “Back” must be one of: one_disc, zipped_halves,"
                + " overlapping. Did you mean zipped_halves?"),
        Ran.run("plan", "--input", "back_style=zipped halvs"));
  }

  @Test
  void theSmallestAndTheLargestValueAreTaken() {
    assertEquals(0, Ran.runSmall("plan").exitCode());
    Ran largest =
        Ran.run(
            "plan",
            "--diameter=60 in",
            "--fabric-width=130",
            "--input=base_fabric_width=130",
            "--input=interfacing_width=130",
            "--input=cheaper_share=100%");
    assertEquals("", largest.err());
    assertEquals(0, largest.exitCode());
  }

  @Test
  void everyMistakeOfARunIsTold() {
    assertEquals(
        Ran.refusal(
            2,
            "There is no input named \"diametre\". Did you mean diameter? 'frillbook inputs' lists"
                + " all.",
            "--input: found \"foo\". Write it as name=value.",
            "fullness: found \"9\". “Fullness” must be a number from 1 to 6 times. Write it like 2.5,"
                + " with a decimal point.",
            "quantity: found \"2.5\". “Cushions” must be a whole number from 1 to 50.",
            "grain: found \"zig\". “Grain of the strips” must be one of: crosswise, lengthwise, bias.",
            "wash_shrink_length: found \"40%\". “Shrinks in length” must be a number from 0% to"
                + " 15%. Write it like 4% or 0.04."),
        Ran.run(
            "plan",
            "--input=diametre=3",
            "--input=fullness=9",
            "--input=quantity=2.5",
            "--input=grain=zig",
            "--input=wash_shrink_length=40%",
            "--input=foo"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"wide", "", "1/0", "-50", "13x", "50,5"})
  void whatIsNoLengthIsAnsweredWithTheForms(String typed) {
    assertEquals(
        Ran.refusal(
            2,
            "fabric_width: found \""
                + typed
                + "\". “Frill fabric width” must be a number from 10 to 130 in."
                + FORMS),
        Ran.run("plan", "--fabric-width", typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"24.9", "3.31 m", "330.1"})
  void aLengthOutOfRangeIsAnsweredInTheUnitOfTheBrief(String typed) {
    assertEquals(
        Ran.refusal(
            2,
            "fabric_width: found \""
                + typed
                + "\". “Frill fabric width” must be a number from 25 to 330 cm."
                + FORMS),
        Ran.run("plan", "--unit", "cm", "--fabric-width", typed));
  }

  @Test
  void anUnknownNameThatIsNearNothingGetsNoGuess() {
    assertEquals(
        Ran.refusal(2, "There is no input named \"zebra\". 'frillbook inputs' lists all."),
        Ran.run("plan", "--input", "zebra=1"));
  }

  @Test
  void anInputGivenAsAnOptionAndByNameIsRefused() {
    assertEquals(
        Ran.refusal(2, "diameter: found \"18\" and \"20\". Give it once."),
        Ran.run("plan", "--diameter", "18", "--input", "diameter=20"));
  }

  @Test
  void anInputGivenTwiceByNameIsRefused() {
    assertEquals(
        Ran.refusal(2, "quantity: found \"2\" and \"2\". Give it once."),
        Ran.run("plan", "--input", "quantity=2", "--input", "quantity=2"));
  }

  @Test
  void aSettingWithoutANameIsRefused() {
    assertEquals(
        Ran.refusal(2, "--input: found \"=4\". Write it as name=value."),
        Ran.run("plan", "--input", "=4"));
  }
}
