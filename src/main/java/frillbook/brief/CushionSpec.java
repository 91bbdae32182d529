package frillbook.brief;

import frillbook.naming.Coded;

/**
 * The cushion and its sewn rows.
 *
 * @param diameter flat, finished, edge to edge
 * @param ringSpacing between neighbouring rows, along a radius
 * @param closingRing one more ring at the outer radius, where a spiral ends; unused by rings
 * @param markingMethod how a spiral is drawn on the base
 * @param centreGap radius left bare at the centre
 * @param edgeClearance radius left bare inside the edge seam
 * @param ringLap overlap where the ends of one separate ring meet; unused by a spiral
 * @param quantity cushions made together
 */
public record CushionSpec(
    double diameter,
    double ringSpacing,
    RowStyle rowStyle,
    YesNo closingRing,
    MarkingMethod markingMethod,
    double centreGap,
    double edgeClearance,
    double ringLap,
    int quantity) {

  /** Lengths of frill on one cushion, each with two ends: one for every separate ring. */
  public int frills(int ringCount) {
    return rowStyle == RowStyle.RINGS ? ringCount : 1;
  }

  /** How a spiral is drawn. */
  public enum MarkingMethod implements Coded {
    /** Distances from the centre on eight spokes, joined by eye. */
    SPOKES,
    /** A pencil on a string that winds up on a peg. */
    STRING,
    /** Half circles on two centres by turns. */
    COMPASS
  }

  /** Whether a ring closes the spiral. */
  public boolean isClosed() {
    return rowStyle == RowStyle.SPIRAL && closingRing == YesNo.YES;
  }

  CushionSpec withRingSpacing(double spacing) {
    return new CushionSpec(
        diameter,
        spacing,
        rowStyle,
        closingRing,
        markingMethod,
        centreGap,
        edgeClearance,
        ringLap,
        quantity);
  }
}
