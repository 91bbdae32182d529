package frillbook.template;

import java.util.Optional;

/**
 * One axis of a chart. Of a drawing, both ends are settled.
 *
 * @param label shown along the axis, with its unit; empty for none
 * @param from its lower end, in units of the axis; empty for one that follows the numbers
 * @param to its upper end, likewise
 */
public record AxisTemplate(String label, Optional<Double> from, Optional<Double> to) {
  private static final double DRAWN_FROM = -1;
  private static final double DRAWN_TO = 1;

  /** An axis nothing is said about. */
  public static AxisTemplate plain(ChartKind kind) {
    return of(kind, "", Optional.empty(), Optional.empty());
  }

  /** A drawing reaches from −1 to 1 where nothing else is said. */
  public static AxisTemplate of(
      ChartKind kind, String label, Optional<Double> from, Optional<Double> to) {
    return kind == ChartKind.DRAWING
        ? new AxisTemplate(
            label, Optional.of(from.orElse(DRAWN_FROM)), Optional.of(to.orElse(DRAWN_TO)))
        : new AxisTemplate(label, from, to);
  }

  /** From end to end, in units of the axis; for an axis with both ends. */
  public double length() {
    return to.orElseThrow() - from.orElseThrow();
  }

  public boolean isReversed() {
    return from.isPresent() && to.isPresent() && length() <= 0;
  }
}
