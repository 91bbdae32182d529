package frillbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** 1 in is 2.54 cm, 1 yd is 36 in, 1 ft is 12 in, exactly (NIST SP 811). */
class LengthTextTest {
  private static final double EXACT = 1e-12;

  @ParameterizedTest
  @CsvSource({
    "45cm, 45",
    "45 CM, 45",
    "18 in, 45.72",
    "1/2in, 1.27",
    "15 3/4 in, 40.005",
    "0.5m, 50",
    "1 1/2 yd, 137.16",
    "10mm, 1",
    "2 ft, 60.96",
    "12, 12",
    "' 12.5 ', 12.5",
    ".5, 0.5",
    "3/4, 0.75",
    "15/16in, 2.38125",
    "13/4 in, 8.255",
    "18 inches, 45.72",
    "1 inch, 2.54",
    "18″, 45.72",
    "3 feet, 91.44",
    "2 yards, 182.88",
    "2 metres, 200",
    "2 meters, 200",
    "½ in, 1.27",
    "17½ in, 44.45",
    "17 ½”, 44.45",
    "17 1/2 in, 44.45",
    "⅜, 0.375",
    "0 in, 0"
  })
  void lengthsAreReadInCentimetres(String text, double centimetres) {
    assertEquals(centimetres, read(text, LengthUnit.CM), EXACT, text);
  }

  @ParameterizedTest
  @CsvSource({
    "45.72cm, 18",
    "18 in, 18",
    "1/2in, 0.5",
    "15 3/4 in, 15.75",
    "0.254m, 10",
    "1 1/2 yd, 54",
    "25.4mm, 1",
    "12, 12",
    "15/16, 0.9375"
  })
  void lengthsAreReadInInches(String text, double inches) {
    assertEquals(inches, read(text, LengthUnit.INCH), EXACT, text);
  }

  @Test
  void theInchMayBeWrittenAsAMark() {
    assertEquals(15.75, read("15 3/4\"", LengthUnit.INCH));
    assertEquals(2.54, read("1\"", LengthUnit.CM), EXACT);
  }

  @Test
  void aFootMayBeWrittenAsAMark() {
    assertEquals(216, read("18'", LengthUnit.INCH), EXACT);
    assertEquals(30.48, read("1’", LengthUnit.CM), EXACT);
  }

  @Test
  void aLengthInTheUnitOfTheBriefIsKeptAsTyped() {
    assertEquals(0.1, read("0.1in", LengthUnit.INCH));
    assertEquals(0.1, read("0.1 cm", LengthUnit.CM));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "wide",
        "in",
        "1/0",
        "1/0in",
        "-3",
        "-3cm",
        "3 furlongs",
        "1..5",
        "1,5",
        "1e3",
        "1/2/3",
        "1.5 1/2",
        "5 in 3",
        "½½",
        "⅟",
        "3 hands",
        "3 cm cm",
        "NaN",
        "/2",
        "2/"
      })
  void whatIsNoLengthIsEmpty(String text) {
    assertEquals(Optional.empty(), LengthText.parse(text, LengthUnit.CM), text);
    assertEquals(Optional.empty(), LengthText.parse(text, LengthUnit.INCH), text);
  }

  private static double read(String text, LengthUnit unit) {
    return LengthText.parse(text, unit).orElseThrow(() -> new AssertionError(text));
  }
}
