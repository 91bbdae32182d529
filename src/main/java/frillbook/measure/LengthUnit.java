package frillbook.measure;

/** The unit every length of one brief, one plan and one workbook is measured in. */
public enum LengthUnit {
  /** International inch, 25.4 mm exactly (NIST SP 811). */
  INCH("in", 2.54, "yd", 36, 16 * Scales.GRAMS_PER_OUNCE),
  CM("cm", 1.0, "m", 100, 1000);

  private final String symbol;
  private final double centimetres;
  private final String longSymbol;
  private final double unitsPerLong;
  private final double parcelGrams;

  LengthUnit(
      String symbol,
      double centimetres,
      String longSymbol,
      double unitsPerLong,
      double parcelGrams) {
    this.symbol = symbol;
    this.centimetres = centimetres;
    this.longSymbol = longSymbol;
    this.unitsPerLong = unitsPerLong;
    this.parcelGrams = parcelGrams;
  }

  /** Written after a number: {@code in} or {@code cm}. */
  public String symbol() {
    return symbol;
  }

  /** Centimetres in one of this unit: 2.54 or 1. */
  public double centimetres() {
    return centimetres;
  }

  /** The unit fabric is sold by: {@code yd} or {@code m}. */
  public String longSymbol() {
    return longSymbol;
  }

  /** Units in one of those: 36 inches in a yard, 100 centimetres in a metre. */
  public double unitsPerLong() {
    return unitsPerLong;
  }

  /** Whether {@code length} comes to one of those at least. */
  public boolean isLong(double length) {
    return Rounding.settle(length / unitsPerLong) >= 1;
  }

  /** Grams in what carriers weigh by: a pound, exactly (NIST SP 811), or a kilogram. */
  public double parcelGrams() {
    return parcelGrams;
  }

  /** The unit shown beside the main results: cm for an inch brief and the other way round. */
  public LengthUnit other() {
    return this == INCH ? CM : INCH;
  }

  /** {@code text} with {@code {unit}} and {@code {long_unit}} filled in. */
  public String say(String text) {
    return text.replace("{unit}", symbol).replace("{long_unit}", longSymbol);
  }

  /** {@code length} of this unit measured in {@code target}; 18 in is 45.72 cm. */
  public double to(LengthUnit target, double length) {
    return this == target ? length : length * centimetres / target.centimetres;
  }

  /** {@code length} of this unit in metres; 36 in are 0.9144 m. */
  public double metres(double length) {
    return length * centimetres / 100;
  }

  /** Metres in a yard or a metre, the unit fabric is sold by: 0.9144 or 1. */
  public double metresPerLong() {
    return metres(unitsPerLong());
  }

  /** {@code area} in this unit squared, in square metres; 1296 in² are 0.83612736 m². */
  public double squareMetres(double area) {
    return area * centimetres * centimetres / 10_000;
  }

  /** {@code volume} in this unit cubed, in litres; 1000 cm³ are 1 L. */
  public double litres(double volume) {
    return volume * centimetres * centimetres * centimetres / 1000;
  }
}
