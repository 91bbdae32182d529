package frillbook.template;

/** What a person types into an input. */
public enum InputKind {
  /** A length in the workbook's unit; its range is given for inch and for cm. */
  LENGTH,
  /** Any number. */
  NUMBER,
  /** A share, kept as a fraction and shown in per cent: 0.05 is 5 %. */
  PERCENT,
  /** A whole number. */
  COUNT,
  /** One of a few codes, each shown by its word. */
  CHOICE,
  /** A currency by its code (ISO 4217). */
  CURRENCY,
  /** A line of a person's own words, or none. */
  TEXT
}
