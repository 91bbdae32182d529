package frillbook.picture;

import frillbook.naming.Coded;

/** What a price is made of. */
public enum MoneyPart implements Coded {
  MATERIALS,
  WAGES,
  OVERHEAD,
  PROFIT,
  TAX
}
