package frillbook.brief;

import frillbook.naming.Coded;

/** Which discs are backed with interfacing. */
public enum Interfaced implements Coded {
  NONE,
  BASE,
  BASE_AND_BACK;

  /** Discs of interfacing for one cushion: 0, 1 or 2. */
  public int discs() {
    return ordinal();
  }
}
