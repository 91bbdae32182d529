package frillbook.picture;

/**
 * How far the ends of all cut lines on one side lie from an edge of the fabric: as far as the
 * line's own mark, less {@code from}, but within the fabric.
 *
 * @param from what is taken off the mark
 * @param most what the fabric allows
 */
public record LineEnd(double from, double most) {
  /** As long as the picture is wide. */
  static final double FREE = 2;

  /** An end at the mark itself. */
  static final LineEnd MARK = new LineEnd(0, FREE);

  /**
   * The end of the line at {@code mark} where discs in a line begin {@code takes} before the edge.
   *
   * @param across whether it is measured towards that edge, and not along it
   */
  double at(double mark, double takes, boolean across) {
    double end = across ? mark - from : mark - from + takes;
    return Math.max(0, Math.min(end, across ? most - takes : most));
  }
}
