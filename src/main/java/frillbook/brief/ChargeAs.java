package frillbook.brief;

import frillbook.naming.Coded;

/** Which amount of every material goes into the cost. */
public enum ChargeAs implements Coded {
  /** All that had to be bought, left-overs included. */
  BOUGHT,
  /** What goes into the cushions; left-overs stay with the maker. */
  USED
}
