package frillbook.template;

/** What stands at every point of a series. */
public enum ChartMarker {
  NONE,
  /** A filled circle. */
  DOT,
  /** An empty square. */
  SQUARE
}
