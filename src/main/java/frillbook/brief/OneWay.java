package frillbook.brief;

import frillbook.naming.Coded;

/** Whether nap, pile or print of a fabric runs one way. */
public enum OneWay implements Coded {
  NO,
  YES
}
