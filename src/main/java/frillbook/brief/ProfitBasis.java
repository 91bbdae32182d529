package frillbook.brief;

import frillbook.naming.Coded;

/** What the profit rate is a share of. */
public enum ProfitBasis implements Coded {
  /** Of the cost: 40 % on a cost of 100 asks 140. */
  MARKUP,
  /** Of the price before tax: 40 % with a cost of 60 asks 100. */
  MARGIN
}
