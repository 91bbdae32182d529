package frillbook.brief;

import frillbook.naming.Coded;

/** What is sewn end to end before it is gathered. */
public enum JoinedBy implements Coded {
  /** A strip for each cushion, all of them alike. */
  CUSHION,
  /** One strip for all cushions, cut apart for them. */
  ORDER
}
