package frillbook.layout;

import java.util.List;

/**
 * A strip in its place.
 *
 * @param corners the four corners in order, the first two on one long side; a rectangle, or for
 *     bias strips joined along the grain a parallelogram whose ends lie at 45° to the strip; where
 *     two corner strips are joined in a pair each is a trapezium
 * @param length cut length, measured along one long side; of a strip of a pair the mean of both
 * @param full whether it is as long as the longest strips of its grain
 * @param paired whether it is joined to a strip of the other corner
 * @param cut whether the plan cuts it; a strip that is only offered stays offcut
 */
public record PlacedStrip(
    List<Point> corners, double length, boolean full, boolean paired, boolean cut) {
  PlacedStrip asCut(boolean isCut) {
    return new PlacedStrip(corners, length, full, paired, isCut);
  }
}
