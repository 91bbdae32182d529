package frillbook.brief;

/** The unit every length of one brief, one plan and one workbook is measured in. */
public enum LengthUnit {
  /** International inch, 25.4 mm exactly (NIST SP 811). */
  INCH("in", 2.54),
  CM("cm", 1.0);

  private final String symbol;
  private final double centimetres;

  LengthUnit(String symbol, double centimetres) {
    this.symbol = symbol;
    this.centimetres = centimetres;
  }

  /** Written after a number: {@code in} or {@code cm}. */
  public String symbol() {
    return symbol;
  }

  /** Centimetres in one of this unit: 2.54 or 1. */
  public double centimetres() {
    return centimetres;
  }

  /** The unit shown beside the main results: cm for an inch brief and the other way round. */
  public LengthUnit other() {
    return this == INCH ? CM : INCH;
  }

  /** {@code length} of this unit measured in {@code target}; 18 in is 45.72 cm. */
  public double to(LengthUnit target, double length) {
    return this == target ? length : length * centimetres / target.centimetres;
  }
}
