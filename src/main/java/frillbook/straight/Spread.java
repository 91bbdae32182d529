package frillbook.straight;

/** How matching discs lie on straight grain. */
public enum Spread {
  /** In lines against each other, from the near end of the strips on. */
  LINES(1),
  /** Two discs, one at either end of the strips, with strips between them. */
  APART(2),
  /**
   * Two discs that touch, one at the near end against the last full strip, one at the far end and
   * the far selvage; lengthwise strips lie beside either.
   */
  ZIGZAG(1);

  private final int rims;

  Spread(int rims) {
    this.rims = rims;
  }

  /** Discs that leave a strip beside them no room at their rim. */
  int rims() {
    return rims;
  }
}
