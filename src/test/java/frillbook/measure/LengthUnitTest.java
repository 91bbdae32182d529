package frillbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The international inch of 25.4 mm and yard of 0.9144 m, exactly (NIST SP 811). */
class LengthUnitTest {
  private static final double EXACT = 1e-12;

  @Test
  void fabricIsSoldByTheYardOrTheMetre() {
    assertEquals("yd", LengthUnit.INCH.longSymbol());
    assertEquals(36, LengthUnit.INCH.unitsPerLong());
    assertEquals("m", LengthUnit.CM.longSymbol());
    assertEquals(100, LengthUnit.CM.unitsPerLong());
  }

  @Test
  void lengthsAreMarkedInOrCm() {
    assertEquals("in", LengthUnit.INCH.symbol());
    assertEquals("cm", LengthUnit.CM.symbol());
  }

  /** A pound is 0.45359237 kg exactly. */
  @Test
  void parcelsAreWeighedInPoundsOrKilograms() {
    assertEquals(453.59237, LengthUnit.INCH.parcelGrams());
    assertEquals(1000, LengthUnit.CM.parcelGrams());
  }

  @Test
  void eitherUnitIsShownBesideTheOther() {
    assertEquals(LengthUnit.CM, LengthUnit.INCH.other());
    assertEquals(LengthUnit.INCH, LengthUnit.CM.other());
  }

  /** 18 × 2.54 = 45.72. */
  @Test
  void eighteenInchesAreAlmostFortySixCentimetres() {
    assertEquals(45.72, LengthUnit.INCH.to(LengthUnit.CM, 18), EXACT);
    assertEquals(18, LengthUnit.CM.to(LengthUnit.INCH, 45.72), EXACT);
  }

  /** 0.1 × 2.54 ÷ 2.54 is not 0.1 in binary. */
  @Test
  void aLengthInItsOwnUnitStaysWhatItIs() {
    assertEquals(.3, LengthUnit.INCH.to(LengthUnit.INCH, .3));
    assertEquals(.3, LengthUnit.CM.to(LengthUnit.CM, .3));
  }

  @Test
  void aYardIsNineTenthsOfAMetreAndALittle() {
    assertEquals(.9144, LengthUnit.INCH.metres(36), EXACT);
    assertEquals(1, LengthUnit.CM.metres(100), EXACT);
  }

  @Test
  void fabricIsSoldByNineTenthsOfAMetreAndALittleOrByTheMetre() {
    assertEquals(.9144, LengthUnit.INCH.metresPerLong(), EXACT);
    assertEquals(1, LengthUnit.CM.metresPerLong(), EXACT);
  }

  /** A yard less a hair that is none is a yard. */
  @ParameterizedTest
  @CsvSource({
    "INCH,36,true",
    "INCH,35.9999999999,true",
    "INCH,35.9,false",
    "CM,100,true",
    "CM,99,false"
  })
  void aYardOrAMetreIsLong(LengthUnit unit, double length, boolean isLong) {
    assertEquals(isLong, unit.isLong(length));
  }

  @Test
  void textsNameTheUnitsOfTheBrief() {
    assertEquals("in per yd a yd", LengthUnit.INCH.say("{unit} per {long_unit} a {long_unit}"));
    assertEquals("cm per m a m", LengthUnit.CM.say("{unit} per {long_unit} a {long_unit}"));
  }

  /** 0.9144² = 0.83612736. */
  @Test
  void aSquareYardInSquareMetres() {
    assertEquals(.83612736, LengthUnit.INCH.squareMetres(36 * 36), EXACT);
    assertEquals(1, LengthUnit.CM.squareMetres(100 * 100), EXACT);
  }

  /** The US gallon of 231 cubic inches is 3.785411784 L (NIST SP 811). */
  @Test
  void aGallonInLitres() {
    assertEquals(3.785411784, LengthUnit.INCH.litres(231), EXACT);
    assertEquals(1, LengthUnit.CM.litres(1000), EXACT);
  }
}
