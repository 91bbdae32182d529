package frillbook.brief;

import frillbook.naming.Coded;

/** What a maker has or leaves. */
public enum YesNo implements Coded {
  NO,
  YES
}
