package frillbook.proofreading;

import frillbook.source.Position;

/**
 * One calculated name needing another.
 *
 * @param at where the need is written
 */
public record Dependency(String from, String to, Kind kind, Position at) {
  /** Which cells of the other name are needed. */
  enum Kind {
    /** Its one cell, or the one in the same row of a table. */
    CELL,
    /** The cell one row above in the same table. */
    ABOVE,
    /** All cells of a column. */
    WHOLE
  }
}
