package frillbook.plan;

import frillbook.naming.Coded;

/** What is cut from the frill cloth, in the order of cutting. */
public enum Piece implements Coded {
  OVERLAY_DISC,
  FULL_STRIP,
  SHORTER_STRIP
}
