package frillbook.thread;

import frillbook.naming.Coded;

/** What is sewn, in working order. */
public enum SeamName implements Coded {
  WIDTHS,
  GATHERING,
  JOINS,
  FREE_EDGE,
  ROWS,
  TACKING,
  EDGE_SEAM,
  BACK
}
