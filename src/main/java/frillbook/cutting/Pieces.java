package frillbook.cutting;

import frillbook.measure.Outline;
import frillbook.strip.Join;

/**
 * What is to be cut from one fabric: strips to be joined into one run, and discs.
 *
 * @param stripWidth cut width of every strip
 * @param joinedLength the run must reach at least this
 * @param spareStrips full strips wanted beyond that
 * @param shortestPiece the shortest strip worth joining
 * @param discCount 0 where no disc is cut from this fabric
 * @param discDiameter above 0 even when there are none
 * @param markingStep the smallest length worth speaking of
 */
public record Pieces(
    double stripWidth,
    double joinedLength,
    int spareStrips,
    double shortestPiece,
    int discCount,
    double discDiameter,
    double markingStep) {

  /** The same with strips of another cut width. */
  public Pieces withStripWidth(double width) {
    return new Pieces(
        width, joinedLength, spareStrips, shortestPiece, discCount, discDiameter, markingStep);
  }

  /**
   * Area of the strips, as long as the run itself, and of the discs: what no plan can do without.
   *
   * @param gain joined length over cut length
   */
  public double area(double gain) {
    double disc = Outline.area(discDiameter);
    return joinedLength / gain * stripWidth + discCount * disc;
  }

  /** Net length the run's strips must add up to; never so little that no strip would do. */
  public double netOfRun(Join join) {
    return Math.max(joinedLength - join.loss(), markingStep);
  }

  /** The same with the spares, each as good as a full strip of {@code fullStrip}. */
  public double netNeeded(Join join, double fullStrip) {
    return netOfRun(join) + spareStrips * Math.max(0, join.net(fullStrip));
  }

  public double discRadius() {
    return discDiameter / 2;
  }
}
