package frillbook.template;

/** What a formula may give. */
enum Sort {
  NUMBER,
  TEXT,
  /** TRUE or FALSE, as a comparison gives it. */
  TRUTH;

  /** What a cell of that format holds. */
  static Sort of(ValueFormat format) {
    return format == ValueFormat.TEXT ? TEXT : NUMBER;
  }
}
