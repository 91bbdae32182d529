package frillbook.materials;

import frillbook.naming.Coded;

/** What is bought, in the order in which a maker buys it. */
public enum MaterialName implements Coded {
  FRILL_FABRIC,
  BASE_FABRIC,
  INTERFACING,
  ZIPS,
  FILLING,
  THREAD,
  EXTRA_ONE,
  EXTRA_TWO,
  EXTRA_THREE
}
