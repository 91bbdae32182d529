package frillbook.brief;

import frillbook.naming.Choice;

/** The line the frill is sewn along. */
public enum RowStyle implements Choice {
  /** One line winding outward. */
  SPIRAL,
  /** Separate closed circles. */
  RINGS
}
