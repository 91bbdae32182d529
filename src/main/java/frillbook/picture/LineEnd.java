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

  double at(double mark) {
    return Math.max(0, Math.min(mark - from, most));
  }
}
