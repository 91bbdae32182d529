package frillbook.brief;

import frillbook.naming.Coded;

/** What matching discs are cut from. */
public enum MatchingDiscFabric implements Coded {
  FRILL,
  BASE
}
