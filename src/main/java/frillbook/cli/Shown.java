package frillbook.cli;

import frillbook.measure.LengthUnit;
import frillbook.measure.Rounding;
import frillbook.measure.Tape;
import frillbook.naming.NamedValues;
import frillbook.template.ValueFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Values as text, the same in every locale. */
final class Shown {
  /** Stands where the plan has no value. */
  private static final String NONE = "–";

  private Shown() {}

  /** As the workbook's number formats show it; the unit is not part of it. */
  static String value(Object value, ValueFormat format, LengthUnit unit, int moneyPlaces) {
    if (!(value instanceof Double number)) {
      return value.equals(NamedValues.NOTHING) ? NONE : value.toString();
    }
    return switch (format) {
      case COUNT, ANGLE -> fixed(number, 0);
      case LENGTH, CUT, LONG -> (number < 0 ? "-" : "") + Tape.say(unit, Math.abs(number));
      case RATIO -> fixed(number, 2);
      case MONEY -> fixed(number, moneyPlaces);
      case PERCENT -> plain(Rounding.toPlaces(3, number * 100));
      case NUMBER -> plain(Rounding.toPlaces(3, number));
      case FLAG -> number == 1 ? "yes" : "no";
      case TEXT, CODE -> plain(number);
    };
  }

  static String fixed(double number, int places) {
    return new BigDecimal(Rounding.toPlaces(places, number))
        .setScale(places, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** Without trailing zeros: 4, 0.125, 1500. */
  static String plain(double number) {
    BigDecimal settled = BigDecimal.valueOf(number).setScale(6, RoundingMode.HALF_UP);
    return settled.signum() == 0 ? "0" : settled.stripTrailingZeros().toPlainString();
  }
}
