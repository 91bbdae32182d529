package frillbook.brief;

import frillbook.naming.Coded;

/** Which way the seam between two strips runs. */
public enum JoinLine implements Coded {
  /** Diagonal (along the grain) on bias strips, square on straight ones. */
  BY_GRAIN,
  /** Square across the strip. */
  SQUARE,
  /** At 45° to the strip. */
  DIAGONAL;

  /** Whether strips cut along {@code grain} are seamed at 45° to themselves. */
  public boolean isDiagonal(Grain grain) {
    return this == DIAGONAL || this == BY_GRAIN && grain == Grain.BIAS;
  }
}
