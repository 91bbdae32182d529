package frillbook.measure;

/**
 * The one place where a quotient becomes a whole number.
 *
 * <p>A quotient that should be whole may arrive as 7.9999999999 or 8.0000000001. It is therefore
 * rounded to six decimal places before it is rounded up or down, here and in every formula of the
 * workbook alike.
 */
public final class Rounding {
  /** Lengths closer together than this, in the unit of the brief, count as equal. */
  public static final double TINY = 1e-6;

  private static final double PLACES = 1e6;

  private Rounding() {}

  /** Half away from zero at six decimals; 0.1 + 0.2 becomes 0.3. */
  public static double settle(double value) {
    return Math.copySign(Math.floor(Math.abs(value) * PLACES + 0.5) / PLACES, value);
  }

  /**
   * Half away from zero at {@code places} decimals: 1.005 at two is 1.01.
   *
   * <p>The number is made one of tenths, hundredths or thousandths first and settled at four
   * decimals of those; {@code ROUND(x,2)} would leave it to the program whether 1.005 is a half.
   */
  public static double toPlaces(int places, double value) {
    double parts = Math.pow(10, places);
    double settled = settleParts(value * parts);
    // The sum with 0 makes 0 of -0.
    return Math.copySign(Math.floor(Math.abs(settled) + 0.5), settled) / parts + 0.0;
  }

  /** Tenths, hundredths or coins at four decimals, before they are rounded to a whole number. */
  public static double settleParts(double parts) {
    return Math.copySign(Math.floor(Math.abs(parts) * 1e4 + 0.5) / 1e4, parts);
  }

  /** A squared length at nine decimals, before its root is drawn. */
  public static double settleSquare(double square) {
    return Math.floor(square * 1e9 + 0.5) / 1e9;
  }

  /**
   * A place in a picture at three decimals: 0.123456 becomes 0.123. Finer than any screen: of a
   * picture from −1 to 1, a thousand dots wide, a half dot.
   *
   * <p>A millionth is added first. Places are often half-way, as 0.8125 is between 0.812 and 0.813,
   * but for the last digit, and one program would round them up and another down; so both give
   * 0.813, and −0.812 for −0.8125.
   */
  public static double drawn(double place) {
    double beside = place + TINY;
    return Math.copySign(Math.floor(Math.abs(beside) * 1e3 + 0.5) / 1e3, beside);
  }

  /** The smallest whole number not below {@code quotient}; 8.0000000001 gives 8, 8.1 gives 9. */
  public static int up(double quotient) {
    return Math.toIntExact((long) Math.ceil(settle(quotient)));
  }

  /** The largest whole number not above {@code quotient}; 7.9999999999 gives 8, 7.9 gives 7. */
  public static int down(double quotient) {
    return Math.toIntExact((long) Math.floor(settle(quotient)));
  }

  /** {@code length} rounded up to a whole number of {@code step}s; 13.54 by 1/8 gives 13.625. */
  public static double upTo(double step, double length) {
    return up(length / step) * step;
  }
}
