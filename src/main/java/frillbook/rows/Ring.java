package frillbook.rows;

/**
 * One full turn of the spiral, or one closed circle.
 *
 * @param ringNo counted from the centre, from 1
 * @param ringRadius where the turn ends, or the radius of the circle
 * @param ringLength sewn length of this ring alone
 * @param runningStitched sewn length from the start to the end of this ring
 * @param runningFlat mark on the ungathered strip that reaches the sewn line there
 * @param ringAngle turned from the centre, in radians: 2π × radius over spacing
 */
public record Ring(
    int ringNo,
    double ringRadius,
    double ringLength,
    double runningStitched,
    double runningFlat,
    double ringAngle) {}
