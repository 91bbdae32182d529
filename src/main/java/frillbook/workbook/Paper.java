package frillbook.workbook;

import org.apache.poi.ss.usermodel.PrintSetup;

/** The paper a workbook is printed on. */
public enum Paper {
  /** 210 mm × 297 mm. */
  A4(PrintSetup.A4_PAPERSIZE, 210 / 25.4 * 72, 297 / 25.4 * 72),
  /** 8.5 in × 11 in. */
  LETTER(PrintSetup.LETTER_PAPERSIZE, 8.5 * 72, 11 * 72);

  private final short code;
  private final double width;
  private final double height;

  Paper(short code, double width, double height) {
    this.code = code;
    this.width = width;
    this.height = height;
  }

  /** Of the shorter edge, in points. */
  double width() {
    return width;
  }

  /** Of the longer edge, in points. */
  double height() {
    return height;
  }

  /** The paper's number in a workbook's print set-up (ISO/IEC 29500-1, 18.3.1.63). */
  short code() {
    return code;
  }
}
