package frillbook.brief;

import frillbook.naming.Coded;

/** What is done to the free edge of the frill, and so what the strip is cut wider for. */
public enum EdgeFinish implements Coded {
  RAW,
  PINKED,
  /** Turned twice and stitched: takes the two turns. */
  NARROW_HEM,
  /** Takes what the machine trims. */
  OVERLOCKED,
  /** Takes what the machine trims. */
  ROLLED,
  /** The strip is doubled lengthwise; both raw edges are gathered together. */
  FOLDED;

  /** Whether thread is sewn along the free edge. */
  public boolean isSewn() {
    return this == NARROW_HEM || isBound();
  }

  /** Whether an overlocker binds it with thread. */
  public boolean isBound() {
    return this == OVERLOCKED || this == ROLLED;
  }
}
