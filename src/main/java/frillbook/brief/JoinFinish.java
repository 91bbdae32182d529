package frillbook.brief;

import frillbook.naming.Choice;

/** How two strips are seamed end to end. */
public enum JoinFinish implements Choice {
  PLAIN,
  FRENCH,
  OVERLOCKED;

  /** How often the seam is sewn: a French join twice. */
  public int passes() {
    return this == FRENCH ? 2 : 1;
  }

  @Override
  public String word() {
    return this == FRENCH ? "French" : Choice.super.word();
  }
}
