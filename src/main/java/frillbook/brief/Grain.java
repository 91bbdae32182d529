package frillbook.brief;

import frillbook.naming.Coded;

/** How strips lie on the fabric. */
public enum Grain implements Coded {
  /** From selvage to selvage. */
  CROSSWISE,
  /** Parallel to the selvage. */
  LENGTHWISE,
  /** At 45° to the selvage. */
  BIAS
}
