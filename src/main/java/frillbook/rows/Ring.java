package frillbook.rows;

/**
 * One full turn of the spiral, or one closed circle.
 *
 * @param ringNo counted from the centre, from 1
 * @param ringRadius where the turn ends, or the radius of the circle
 * @param markedRadius the same on the base before sewing draws it in
 * @param ringLength sewn length of this ring alone
 * @param runningStitched sewn length from the start to the end of this ring
 * @param runningFlat mark on the ungathered strip that reaches the sewn line there
 * @param edgeFullness fullness seen at the free edge of a frill that lies flat
 */
public record Ring(
    int ringNo,
    double ringRadius,
    double markedRadius,
    double ringLength,
    double runningStitched,
    double runningFlat,
    double edgeFullness) {}
