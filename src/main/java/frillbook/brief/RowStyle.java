package frillbook.brief;

import frillbook.naming.Coded;

/** The line the frill is sewn along. */
public enum RowStyle implements Coded {
  /** One line winding outward. */
  SPIRAL,
  /** Separate closed circles. */
  RINGS
}
