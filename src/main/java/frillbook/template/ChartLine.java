package frillbook.template;

/** How a series' points are joined. Told apart by weight and dash, so that print in black does. */
public enum ChartLine {
  NONE,
  THIN,
  MEDIUM,
  THICK,
  DASHED,
  DOTTED,
  /** Broad and pale, in the colour of the fabric: down the middle of a strip. */
  TINT
}
