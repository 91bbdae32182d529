package frillbook.reading;

import frillbook.source.Mistakes;
import frillbook.source.Position;

/** How much a template that repeats its rows comes to; a few lines can make it endless. */
final class Extent {
  /** The built-in templates repeat some five hundred rows and columns. */
  private static final int MOST = 10_000;

  private int repeated;

  /** Counts one more; whether it is too many. */
  boolean isExceeded() {
    return ++repeated > MOST;
  }

  static void tell(Position at, Mistakes mistakes) {
    mistakes.add(
        at,
        "more than " + MOST + " repeated rows and columns",
        "fewer in the whole workbook",
        "give each shorter lists, or use a table");
  }
}
