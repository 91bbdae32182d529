package frillbook.cutting;

import frillbook.measure.Outline;
import frillbook.strip.Join;

/**
 * What is to be cut from one fabric: strips to be joined into one run, and discs.
 *
 * @param stripWidth cut width of every strip
 * @param joinedLength what all joined strips together must reach at least
 * @param cushions that have a joined strip each, all alike; 1 where one strip is joined
 * @param spareStrips full strips wanted beyond that
 * @param shortestPiece the shortest strip worth joining
 * @param longestStrip the longest strip that is cut lengthwise
 * @param discCount 0 where no disc is cut from this fabric
 * @param discDiameter above 0 even when there are none
 * @param markingStep the smallest length worth speaking of
 * @param stripWorth length of fabric that costs as much as to cut and join a strip
 */
public record Pieces(
    double stripWidth,
    double joinedLength,
    int cushions,
    int spareStrips,
    double shortestPiece,
    double longestStrip,
    int discCount,
    double discDiameter,
    double markingStep,
    double stripWorth) {

  /** One joined strip, however long its strips. */
  public Pieces(
      double stripWidth,
      double joinedLength,
      int spareStrips,
      double shortestPiece,
      int discCount,
      double discDiameter,
      double markingStep) {
    this(
        stripWidth,
        joinedLength,
        1,
        spareStrips,
        shortestPiece,
        Double.MAX_VALUE,
        discCount,
        discDiameter,
        markingStep,
        0);
  }

  /** Whether every cushion has a joined strip of its own. */
  public boolean ownStrips() {
    return cushions > 1;
  }

  /** Net length the strips of one cushion must add up to; never so little that none would do. */
  public double netOfCushion(Join join) {
    return Math.max(joinedLength / cushions - join.loss(), markingStep);
  }

  /** The shortest strip that is cut. */
  public double least(Join join) {
    return join.shortestUseful(shortestPiece);
  }

  /** The same with strips of another cut width. */
  public Pieces withStripWidth(double width) {
    return new Pieces(
        width,
        joinedLength,
        cushions,
        spareStrips,
        shortestPiece,
        longestStrip,
        discCount,
        discDiameter,
        markingStep,
        stripWorth);
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
