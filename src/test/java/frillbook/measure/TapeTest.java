package frillbook.measure;

import static frillbook.measure.LengthUnit.CM;
import static frillbook.measure.LengthUnit.INCH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a tape shows, by hand. */
class TapeTest {
  @ParameterizedTest
  @CsvSource({
    "19.875, 19 7/8",
    "301.75, 301 3/4",
    "49.5, 49 1/2",
    "54, 54",
    "0.75, 3/4",
    "0, 0",
    "-1.5, 0",
    // 755.4 in are 6043.2 eighths, and 6043 of them 755 3/8
    "755.4, 755 3/8",
    // 755.97 in are 6047.8 eighths, and 6048 of them 756
    "755.97, 756"
  })
  void inchesAreSaidInEighthsInLowestTerms(double length, String said) {
    assertEquals(said, Tape.say(INCH, length));
  }

  /** 2.25 in × √2 is 3.182 in: 50.9 sixteenths, and 51 of them 3 3/16. */
  @ParameterizedTest
  @CsvSource({"0.3125, 5/16", "0.7, 11/16", "3.182, 3 3/16", "3.98, 4"})
  void shortLengthsAreSaidInSixteenths(double length, String said) {
    assertEquals(said, Tape.say(INCH, length));
  }

  /** A size that was rounded up to sixteenths; one beside it, by a hair more than a hair. */
  @ParameterizedTest
  @CsvSource({"19.8125, 19 13/16", "19.81250001, 19 13/16", "19.8, 19 3/4", "19.82, 19 7/8"})
  void wholeSixteenthsAreSaidAsTheyAre(double length, String said) {
    assertEquals(said, Tape.say(INCH, length));
  }

  @ParameterizedTest
  @CsvSource({"127.28, 127.3", "48, 48", "0.32, 0.3", "5.5, 5.5", "47.25, 47.3", "0, 0"})
  void centimetresAreSaidToTheMillimetre(double length, String said) {
    assertEquals(said, Tape.say(CM, length));
  }

  /** 20 yards are 720 in. */
  @ParameterizedTest
  @CsvSource({
    "755.4, 20 yd 35 3/8 in",
    "45, 1 yd 9 in",
    "720, 20 yd",
    "720.5, 20 yd 1/2 in",
    "35.97, 1 yd",
    "18, 18 in",
    "0, 0 in"
  })
  void longLengthsAreSaidInYardsAndInches(double length, String said) {
    assertEquals(said, Tape.sayLong(INCH, length));
  }

  @ParameterizedTest
  @CsvSource({
    "1890, 18 m 90 cm",
    "1890.3, 18 m 90.3 cm",
    "1890.24, 18 m 90.2 cm",
    "100, 1 m",
    "99.96, 1 m",
    "47.25, 47.3 cm"
  })
  void longLengthsAreSaidInMetresAndCentimetresAsCellsShowThem(double length, String said) {
    assertEquals(said, Tape.sayLong(CM, length));
  }

  /** What is said of a limit is the limit: no tape has 0.1 in, and 0.32 cm is not 0.3. */
  @ParameterizedTest
  @CsvSource({
    "INCH, 0.125, 1/8",
    "INCH, 0.0625, 1/16",
    "INCH, 4.5, 4 1/2",
    "INCH, 0.1, 0.1",
    "INCH, -0.5, -1/2",
    "INCH, 0, 0",
    "CM, 0.32, 0.32",
    "CM, 0.125, 0.125"
  })
  void aLimitIsSaidExactly(LengthUnit unit, double limit, String said) {
    assertEquals(said, Tape.sayExactly(unit, limit));
  }

  /** 11.619 in are 185.9 sixteenths; 0.3 cm are three tenths but for the last digit. */
  @Test
  void aLengthGoesUpOrDownToTheFinestMark() {
    assertEquals(11.625, Tape.up(INCH, 11.619));
    assertEquals(11.5625, Tape.down(INCH, 11.619));
    assertEquals(.3, Tape.up(CM, .1 + .2));
    assertEquals(.3, Tape.down(CM, .299999999));
  }
}
