package frillbook.brief;

/**
 * The cushion and its sewn rows.
 *
 * @param diameter flat, finished, edge to edge
 * @param ringSpacing between neighbouring rows, along a radius
 * @param centreGap radius left bare at the centre
 * @param edgeClearance radius left bare inside the edge seam
 * @param ringLap overlap where the ends of one separate ring meet; unused by a spiral
 * @param quantity cushions made together
 */
public record CushionSpec(
    double diameter,
    double ringSpacing,
    RowStyle rowStyle,
    double centreGap,
    double edgeClearance,
    double ringLap,
    int quantity) {

  /** Lengths of frill on one cushion, each with two ends: one for every separate ring. */
  public int frills(int ringCount) {
    return rowStyle == RowStyle.RINGS ? ringCount : 1;
  }

  CushionSpec withRingSpacing(double spacing) {
    return new CushionSpec(
        diameter, spacing, rowStyle, centreGap, edgeClearance, ringLap, quantity);
  }
}
