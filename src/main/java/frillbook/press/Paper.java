package frillbook.press;

import frillbook.measure.LengthUnit;

/** The paper a workbook is printed on. */
public enum Paper {
  /** 210 mm × 297 mm. */
  A4(9, 210 / 25.4 * 72, 297 / 25.4 * 72),
  /** 8.5 in × 11 in. */
  LETTER(1, 8.5 * 72, 11 * 72);

  private final int code;
  private final double width;
  private final double height;

  Paper(int code, double width, double height) {
    this.code = code;
    this.width = width;
    this.height = height;
  }

  /** What a workbook in {@code unit} is printed on unless somebody says otherwise. */
  public static Paper usualFor(LengthUnit unit) {
    return unit == LengthUnit.INCH ? LETTER : A4;
  }

  /** Of the shorter edge, in points. */
  public double width() {
    return width;
  }

  /** Of the longer edge, in points. */
  public double height() {
    return height;
  }

  /** The paper's number in a workbook's print set-up (ISO/IEC 29500-1, 18.3.1.63). */
  public int code() {
    return code;
  }
}
