package frillbook.brief;

import frillbook.naming.Coded;

/** How the back of the cushion is made. */
public enum BackStyle implements Coded {
  /** One disc; the opening in the edge seam is closed by hand. */
  ONE_DISC,
  /** Two half discs with a zip between them. */
  ZIPPED_HALVES,
  /** Two pieces that overlap across the middle. */
  OVERLAPPING;

  public boolean hasZip() {
    return this == ZIPPED_HALVES;
  }

  /** Pieces for one cushion. */
  public int pieces() {
    return this == ONE_DISC ? 1 : 2;
  }

  /** Lines sewn across the back: along either side of the zip, or two hems. */
  public int seams() {
    return this == ONE_DISC ? 0 : 2;
  }
}
