package frillbook.measure;

/**
 * A weight as kitchen scales show it: in whole grams where lengths are in centimetres; where they
 * are in inches in ounces, tenths of them under a pound, and from a pound on in pounds and ounces.
 */
public final class Scales {
  /** The international avoirdupois ounce, exactly (NIST SP 811). */
  public static final double GRAMS_PER_OUNCE = 28.349523125;

  private static final int OUNCES = 16;

  private Scales() {}

  /** Tenths of an ounce, or grams, settled; 100 g are 35.274 tenths of an ounce. */
  public static double parts(LengthUnit unit, double grams) {
    return Rounding.settleParts(unit == LengthUnit.CM ? grams : grams / GRAMS_PER_OUNCE * 10);
  }

  /** {@code grams} with their unit: 3.5 oz, 1 lb, 2 lb 3 oz; 100 g. */
  public static String say(LengthUnit unit, double grams) {
    double fine = parts(unit, grams);
    long pound = OUNCES * 10L;
    boolean isFine = unit == LengthUnit.CM || fine < pound;
    long parts = isFine ? Math.round(fine) : 10 * Math.round(fine / 10);
    if (unit == LengthUnit.CM) {
      return parts + " g";
    } else if (parts < pound) {
      return Tape.tenths(parts) + " oz";
    }
    return parts / pound + " lb" + (parts % pound == 0 ? "" : " " + parts % pound / 10 + " oz");
  }
}
