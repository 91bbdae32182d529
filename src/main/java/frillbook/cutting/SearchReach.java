package frillbook.cutting;

import frillbook.measure.Rounding;

/**
 * How far a search for a length reaches.
 *
 * @param searchRows rows it takes
 * @param searchStep buy steps that a step of it is: 1 as long as so many rows reach as far as they
 *     must
 */
public record SearchReach(int searchRows, int searchStep) {
  /** The most rows a search may take. */
  public static final int MOST = 14;

  /** So many rows that {@code buySteps} are tried, in steps as fine as these allow. */
  public static SearchReach of(double buySteps) {
    int step = Math.max(1, Rounding.up(buySteps / (1 << MOST)));
    int rows = Rounding.up(Math.log(buySteps / step) / Math.log(2));
    return new SearchReach(Math.max(1, Math.min(MOST, rows)), step);
  }
}
