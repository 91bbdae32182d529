package frillbook.measure;

import java.math.BigDecimal;

/**
 * A length as it is read off a tape: 19 7/8 and not 19.875.
 *
 * <p>In inches to the nearest eighth, in lowest terms. What is under four inches, or a whole number
 * of sixteenths, is told to the sixteenth: a small step is marked many times over, and a size that
 * was rounded up to sixteenths is meant so. In centimetres to the millimetre.
 */
public final class Tape {
  private static final int SIXTEENTHS = 16;

  private static final int MILLIMETRES = 10;

  /** In sixteenths of an inch; what is shorter is told to the sixteenth. */
  private static final int SHORT = 4 * SIXTEENTHS;

  private Tape() {}

  /**
   * {@code length} in sixteenths of an inch or in millimetres, settled; 19.9 in are 318.4. What is
   * under 0, as a radius where no ring fits, is nothing.
   */
  public static double parts(LengthUnit unit, double length) {
    return Rounding.settleParts(Math.max(0, length) * fine(unit));
  }

  private static int fine(LengthUnit unit) {
    return unit == LengthUnit.CM ? MILLIMETRES : SIXTEENTHS;
  }

  /** The longest that a tape tells to its finest mark and is no longer: 16.15 in is 16 1/8. */
  public static double down(LengthUnit unit, double length) {
    return (double) Rounding.down(length * fine(unit)) / fine(unit);
  }

  /** The shortest that it tells so and is no shorter: 11.619 in is 11 5/8, 11.61 cm 11.7. */
  public static double up(LengthUnit unit, double length) {
    return (double) Rounding.up(length * fine(unit)) / fine(unit);
  }

  private static long told(LengthUnit unit, double length) {
    double parts = parts(unit, length);
    boolean isFine = unit == LengthUnit.CM || parts < SHORT || parts == Math.rint(parts);
    return isFine ? Math.round(parts) : 2 * Math.round(parts / 2);
  }

  /** {@code length} without its unit: 19 7/8, 3/4, 0; 47.3 or 48 in centimetres. */
  public static String say(LengthUnit unit, double length) {
    return say(unit, told(unit, length));
  }

  /**
   * A length that must be told as it is, as a limit must: 1/8, or 0.1 in where a tape has no such
   * mark; 0.32 cm.
   */
  public static String sayExactly(LengthUnit unit, double length) {
    double parts = Math.abs(length) * SIXTEENTHS;
    boolean isMark = unit == LengthUnit.INCH && parts == Math.rint(parts);
    return isMark
        ? (length < 0 ? "-" : "") + fraction((long) parts)
        : BigDecimal.valueOf(length).stripTrailingZeros().toPlainString();
  }

  private static String say(LengthUnit unit, long parts) {
    return unit == LengthUnit.CM ? tenths(parts) : fraction(parts);
  }

  /** {@code parts} tenths, the last place left out where it is 0. */
  static String tenths(long parts) {
    return parts / 10 + (parts % 10 == 0 ? "" : "." + parts % 10);
  }

  private static String fraction(long sixteenths) {
    long above = sixteenths % SIXTEENTHS;
    long below = SIXTEENTHS;
    while (above != 0 && above % 2 == 0) {
      above /= 2;
      below /= 2;
    }
    long inches = sixteenths / SIXTEENTHS;
    if (above == 0) {
      return Long.toString(inches);
    }
    return (inches == 0 ? "" : inches + " ") + above + "/" + below;
  }

  /**
   * {@code length} with its units, the long one first: 20 yd 35 3/8 in, 2 yd, 18 in; 18 m 90.5 cm.
   */
  public static String sayLong(LengthUnit unit, double length) {
    long parts = told(unit, length);
    long whole = Math.round(unit.unitsPerLong() * fine(unit));
    String less = say(unit, parts % whole) + " " + unit.symbol();
    if (parts < whole) {
      return less;
    }
    String more = parts / whole + " " + unit.longSymbol();
    return parts % whole == 0 ? more : more + " " + less;
  }
}
