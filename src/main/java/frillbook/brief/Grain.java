package frillbook.brief;

import frillbook.naming.Coded;

/** How strips lie on the cloth. */
public enum Grain implements Coded {
  /** From selvage to selvage. */
  ACROSS,
  /** Parallel to the selvage. */
  ALONG,
  /** At 45° to the selvage. */
  BIAS
}
