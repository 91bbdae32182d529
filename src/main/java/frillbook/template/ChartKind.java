package frillbook.template;

/** What a chart is for. */
public enum ChartKind {
  /** A shape to scale, without axes: one unit is as long across as upwards. */
  DRAWING,
  /** Numbers to be read off two axes. */
  LINES,
  /** One bar for every row of a table, its number beside it. */
  BARS,
  /** Filled shapes about a centre, all in the colour of the fabric, which shows through itself. */
  PETALS
}
