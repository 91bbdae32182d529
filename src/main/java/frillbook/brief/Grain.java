package frillbook.brief;

import frillbook.naming.Choice;

/** How strips lie on the cloth. */
public enum Grain implements Choice {
  /** From selvage to selvage. */
  ACROSS,
  /** Parallel to the selvage. */
  ALONG,
  /** At 45° to the selvage. */
  BIAS
}
