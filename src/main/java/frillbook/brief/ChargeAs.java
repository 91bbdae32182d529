package frillbook.brief;

import frillbook.naming.Choice;

/** Which amount of every material goes into the cost. */
public enum ChargeAs implements Choice {
  /** All that had to be bought, left-overs included. */
  BOUGHT,
  /** What goes into the cushions; left-overs stay with the maker. */
  USED
}
