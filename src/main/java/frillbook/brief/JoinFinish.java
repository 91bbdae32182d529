package frillbook.brief;

import frillbook.naming.Coded;

/** How two strips are seamed end to end. */
public enum JoinFinish implements Coded {
  PLAIN,
  FRENCH,
  OVERLOCKED;

  /** How often the seam is sewn: a French join twice. */
  public int passes() {
    return this == FRENCH ? 2 : 1;
  }
}
