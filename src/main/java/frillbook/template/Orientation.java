package frillbook.template;

/** Which way a printed sheet is held. */
public enum Orientation {
  PORTRAIT,
  LANDSCAPE
}
