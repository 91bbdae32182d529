package frillbook.press;

/** The byte that stands before what may be one of several, in a press's file. */
final class PressTag {
  static final int WORDS = 1;
  static final int TEXT = 2;
  static final int NUMBER = 3;
  static final int CHOICE = 4;
  static final int MEASURE = 5;

  static final int LINE = 11;
  static final int OTHER_UNIT = 12;
  static final int ENTRY = 13;
  static final int FAULT = 14;
  static final int FAULT_SENTENCE = 15;
  static final int INPUT_FAULT = 16;
  static final int REMARK = 17;
  static final int SAID = 18;
  static final int VERDICT = 19;
  static final int FAILING = 20;
  static final int PARTS = 21;
  static final int CONVERTED = 22;
  static final int LONG_UNIT = 23;
  static final int FIRST_VERDICT = 24;
  static final int EXCERPT = 25;

  private PressTag() {}
}
