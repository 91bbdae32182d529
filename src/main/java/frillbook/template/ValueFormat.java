package frillbook.template;

/** How a calculated value is shown. */
public enum ValueFormat {
  /** A whole number. */
  COUNT,
  /** A length to 0.01 in or 0.1 cm. */
  LENGTH,
  /** A length that is marked and cut: inches as a fraction, cm to 0.1. */
  CUT,
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
  /** 1 shown as yes, 0 shown as no. */
  FLAG;

  public boolean isLength() {
    return this == LENGTH || this == CUT;
  }
}
