package frillbook.offcut;

import frillbook.naming.Coded;

/** Where a rectangle may be left in one piece on the frill fabric. */
public enum Place implements Coded {
  /** Nothing is left. */
  NOWHERE,
  /** Behind the last full strip that is cut. */
  BEHIND,
  /** Along the edge that straight strips come to last. */
  BEYOND,
  /** At the near end of the full strips, which lie end to end up to the far end. */
  END,
  /** Beside the matching discs, where no strip is cut. */
  BESIDE,
  /** In the corner that bias cut lines start in. */
  NEAR_CORNER,
  /** In the corner that they end in. */
  FAR_CORNER,
  /** Beside the matching discs of the last line of a band. */
  LAST_BAND,
  /** Beside all the lines of the band. */
  BANDS
}
