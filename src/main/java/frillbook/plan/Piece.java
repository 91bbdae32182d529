package frillbook.plan;

import frillbook.naming.Coded;

/** What is cut from the frill fabric, in the order of cutting. */
public enum Piece implements Coded {
  MATCHING_DISC,
  FULL_STRIP,
  SHORTER_STRIP
}
