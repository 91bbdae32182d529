package frillbook.layout;

import frillbook.bias.BiasPlan;
import java.util.List;

/**
 * The rectangle bias strips are cut from, seen from one of the two corners the strips run across.
 *
 * <p>From the near corner u runs along the longer side and v along the shorter; the far corner sees
 * the same turned by half a turn. A strip is found by {@code depth}, how far it is from the corner,
 * and by {@code start}, how far along itself it begins, counted from the line that halves the
 * corner; both are measured at 45° to the edges. Turning leaves a slant what it is, so strips of
 * both corners can be joined; a mirror image would not, for fabric has a right side.
 *
 * @param far whether it is the far corner
 * @param fabricWidth usable width of the fabric
 * @param stripWidth cut width
 * @param slanting whether both ends of a strip lie along the longer side
 */
record BiasCorner(
    BiasPlan plan, boolean far, double fabricWidth, double stripWidth, boolean slanting) {
  private static final double ROOT2 = Math.sqrt(2);

  /**
   * A strip {@code length} long whose side nearer to the corner begins at {@code start} at {@code
   * depth}. Slanting ends bring the other side one strip width further.
   */
  PlacedStrip strip(double depth, double start, double length, boolean full) {
    double outer = depth + stripWidth;
    double shift = slanting ? stripWidth : 0;
    List<Point> corners =
        List.of(
            across(depth, start),
            across(depth, start + length),
            across(outer, start + length + shift),
            across(outer, start + shift));
    return new PlacedStrip(corners, length, full, false, false);
  }

  /** A strip that ends on both edges of the corner, as it lies there. */
  PlacedStrip whole(double depth, double length) {
    double outer = depth + stripWidth;
    List<Point> corners =
        List.of(
            across(depth, -depth),
            across(depth, depth),
            across(outer, outer),
            across(outer, -outer));
    return new PlacedStrip(corners, length, false, true, false);
  }

  /** Where the side of a strip at {@code depth} first has room for the whole width. */
  double firstStart(double depth) {
    return Math.max(-depth, depth - ROOT2 * plan.waist());
  }

  private Point across(double depth, double along) {
    return at((depth + along) / ROOT2, (depth - along) / ROOT2);
  }

  /** The place u along the longer and v along the shorter side from this corner. */
  Point at(double u, double v) {
    return far ? onFabric(plan.longer() - u, plan.shorter() - v) : onFabric(u, v);
  }

  /** A quarter turn where the longer side lies across the fabric. */
  private Point onFabric(double u, double v) {
    boolean lengthwise = plan.usableLength() - plan.bandLength() >= fabricWidth;
    return lengthwise ? new Point(u, v) : new Point(v, fabricWidth - u);
  }
}
