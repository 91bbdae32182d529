package frillbook.formula;

/** What a formula may give. */
public enum Sort {
  NUMBER,
  TEXT,
  /** TRUE or FALSE, as a comparison gives it. */
  TRUTH
}
