package frillbook.workbook;

import frillbook.brief.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.ValueFormat;

/** The number format codes of a workbook's cells. */
final class NumberFormats {
  static final String GENERAL = "General";

  /** A dash for 0, a word for a failed check. */
  static final String FAULT = "[=0]\"–\";[=1]\"stop\";\"mind\"";

  private static final String PERCENT = "0.0%";

  private NumberFormats() {}

  static String of(ValueFormat format, LengthUnit unit) {
    return switch (format) {
      case COUNT, ANGLE -> "0";
      case LENGTH -> unit == LengthUnit.INCH ? "0.00" : "0.0";
      case CUT -> unit == LengthUnit.INCH ? "# ??/??" : "0.0";
      case RATIO -> "0.00";
      case PERCENT -> PERCENT;
      // A place that is always shown keeps a whole number from ending in a bare point.
      case NUMBER -> "0.0##";
      case TEXT -> GENERAL;
      case FLAG -> "[=1]\"yes\";\"no\"";
    };
  }

  /** An input shows what was typed, all its places, so that nobody doubts what counts. */
  static String of(InputKind kind) {
    return switch (kind) {
      case PERCENT -> PERCENT;
      case COUNT, LENGTH, NUMBER, CHOICE -> GENERAL;
    };
  }

  /** A length in the unit the workbook is not made in, the unit behind it. */
  static String inOther(LengthUnit unit) {
    return unit == LengthUnit.INCH ? "0.0\" cm\"" : "0.00\" in\"";
  }
}
