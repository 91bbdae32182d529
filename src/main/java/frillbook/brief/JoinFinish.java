package frillbook.brief;

import frillbook.naming.Choice;

/** How two strips are seamed end to end. */
public enum JoinFinish implements Choice {
  PLAIN,
  FRENCH,
  OVERLOCKED;

  @Override
  public String word() {
    return this == FRENCH ? "French" : Choice.super.word();
  }
}
