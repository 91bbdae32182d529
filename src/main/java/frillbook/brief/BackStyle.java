package frillbook.brief;

import frillbook.naming.Choice;

/** How the back of the cushion is made. */
public enum BackStyle implements Choice {
  /** One disc; the opening in the edge seam is closed by hand. */
  ONE_DISC,
  /** Two half discs with a zip between them. */
  ZIPPED_HALVES,
  /** Two pieces that overlap across the middle. */
  OVERLAPPING
}
