package frillbook.look;

import frillbook.measure.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.Phrase;
import frillbook.template.Phrases;
import frillbook.template.ValueFormat;

/** The number format codes of a workbook's cells. */
public final class NumberFormats {
  public static final String GENERAL = "General";

  /** Text that stays text, whatever it begins with. */
  public static final String AS_TYPED = "@";

  /** A tape's eighths; conditional formats take them to their lowest terms. */
  public static final String EIGHTHS = "# ?/8";

  /** Of inches that nobody marks: the nearest fraction of at most ninths. */
  private static final String NINTHS = "# ?/?";

  /** Behind a length in inches that stands beside one in centimetres. */
  public static final String INCHES = "\" in\"";

  private static final String FRACTION = "# ??/??";

  private static final String PERCENT = "0%";

  /** Of per cent that are not whole. */
  public static final String BROKEN_PERCENT = "0.0##%";

  /** Of most currencies; conditional formats change it for the others. */
  public static final String MONEY = "#,##0.00";

  private NumberFormats() {}

  /** A dash for 0, a word for a failed check. */
  public static String fault(Phrases phrases) {
    String stop = phrases.say(Phrase.STOP);
    return "[=0]\"–\";[=1]\"" + stop + "\";\"" + phrases.say(Phrase.LOOK_AGAIN) + "\"";
  }

  /** A word for the code of a failed check, level × 1000 and its place; nothing for 0. */
  public static String failing(Phrases phrases) {
    String stop = phrases.say(Phrase.STOP);
    return "[=0]\"\";[<2000]\"" + stop + "\";\"" + phrases.say(Phrase.LOOK_AGAIN) + "\"";
  }

  /** For a sheet that only those read who check the workbook. */
  public static String working(ValueFormat format, LengthUnit unit, Phrases phrases) {
    return format.isLength() && unit == LengthUnit.INCH ? NINTHS : of(format, unit, phrases);
  }

  public static String of(ValueFormat format, LengthUnit unit, Phrases phrases) {
    boolean inch = unit == LengthUnit.INCH;
    return switch (format) {
      case COUNT, ANGLE -> "0";
      case LENGTH, LONG, CUT -> inch ? EIGHTHS : "0.0";
      case MONEY -> MONEY;
      case RATIO -> "0.00";
      case PERCENT -> PERCENT;
      // A place that is always shown keeps a whole number from ending in a bare point.
      case NUMBER -> "0.0##";
      case TEXT, CODE -> GENERAL;
      case FLAG ->
          "[=1]\"" + phrases.say(Phrase.YES_WORD) + "\";\"" + phrases.say(Phrase.NO_WORD) + "\"";
    };
  }

  public static String money(int places) {
    return places == 0 ? "#,##0" : "#,##0." + "0".repeat(places);
  }

  /** An input shows what was typed, all its places, so that nobody doubts what counts. */
  public static String of(InputKind kind, LengthUnit unit) {
    return switch (kind) {
      case PERCENT -> PERCENT;
      case LENGTH -> unit == LengthUnit.INCH ? FRACTION : GENERAL;
      case TEXT -> AS_TYPED;
      case COUNT, NUMBER, CHOICE, CURRENCY -> GENERAL;
    };
  }

  /** Of ounces and yards. */
  public static final String TENTHS = "0.0";

  /** Numbers with their unit behind them. */
  public static String with(String format, String unit) {
    return format + "\" " + unit + "\"";
  }

  /** A length in the unit the workbook is not made in, the unit behind it. */
  public static String inOther(LengthUnit unit) {
    return unit == LengthUnit.INCH ? "0.0\" cm\"" : EIGHTHS + INCHES;
  }
}
