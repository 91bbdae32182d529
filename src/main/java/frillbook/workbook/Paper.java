package frillbook.workbook;

import org.apache.poi.ss.usermodel.PrintSetup;

/** The paper a workbook is printed on. */
public enum Paper {
  /** 210 mm × 297 mm. */
  A4(PrintSetup.A4_PAPERSIZE),
  /** 8.5 in × 11 in. */
  LETTER(PrintSetup.LETTER_PAPERSIZE);

  private final short code;

  Paper(short code) {
    this.code = code;
  }

  /** The paper's number in a workbook's print set-up (ISO/IEC 29500-1, 18.3.1.63). */
  short code() {
    return code;
  }
}
