package frillbook.template;

/** How a calculated value is shown. */
public enum ValueFormat {
  /** A whole number. */
  COUNT,
  /** A length to 0.01 in or 0.1 cm. */
  LENGTH,
  /** A length that is marked and cut: inches as a fraction, cm to 0.1. */
  CUT,
  /** A length of many yards or metres, beside which these may be told. */
  LONG,
  /** A quotient of two lengths, to 0.01. */
  RATIO,
  /** A fraction shown in per cent. */
  PERCENT,
  /** Whole degrees. */
  ANGLE,
  /** Any other number, to 0.001. */
  NUMBER,
  /** Money, to the currency's minor unit. */
  MONEY,
  /** Words. */
  TEXT,
  /** One of a few codes, each shown by its word. */
  CODE,
  /** 1 shown as yes, 0 shown as no. */
  FLAG;

  /** Whether a cell shows words. */
  public boolean isWords() {
    return this == TEXT || this == CODE;
  }

  public boolean isLength() {
    return this == LENGTH || this == CUT || this == LONG;
  }
}
