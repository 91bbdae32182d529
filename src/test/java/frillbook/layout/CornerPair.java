package frillbook.layout;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Two strips of opposite corners, moved but never turned until the ends they had on the short edges
 * of the fabric meet, as one strip.
 */
record CornerPair(PlacedStrip one, PlacedStrip other, Laid laid) {
  private static final double CLOSE = 1e-6;

  /** The strip that a pair makes. */
  record Joined(Polygon outline) {
    /** Of its longest side. */
    double length() {
      Coordinate[] at = outline.getCoordinates();
      double longest = 0;
      for (int i = 1; i < at.length; i++) {
        longest = Math.max(longest, at[i].distance(at[i - 1]));
      }
      return longest;
    }
  }

  double length() {
    return one.length() + other.length();
  }

  Joined joined() {
    Coordinate to = shortEdgeEnd(one).midPoint();
    Coordinate from = shortEdgeEnd(other).midPoint();
    var move = AffineTransformation.translationInstance(to.x - from.x, to.y - from.y);
    Geometry both =
        OverlayNGRobust.union(
            List.of(OnFabric.polygon(one), move.transform(OnFabric.polygon(other))));
    Geometry plain = DouglasPeuckerSimplifier.simplify(both, CLOSE);
    if (plain.getNumPoints() != 5 || plain.getArea() < plain.convexHull().getArea() - CLOSE) {
      throw new AssertionError(laid.what() + ": no plain strip: " + plain);
    }
    return new Joined((Polygon) plain);
  }

  /** The end that lies along the shorter side of the fabric that strips are cut from. */
  private LineSegment shortEdgeEnd(PlacedStrip strip) {
    CuttingSheet sheet = CuttingSheet.of(laid);
    boolean lengthwise = sheet.stripsLength() >= sheet.fabricWidth();
    Coordinate[] at = OnFabric.polygon(strip).getCoordinates();
    LineSegment[] ends = {new LineSegment(at[1], at[2]), new LineSegment(at[3], at[0])};
    return Arrays.stream(ends)
        .filter(end -> Math.abs(lengthwise ? end.p0.x - end.p1.x : end.p0.y - end.p1.y) < CLOSE)
        .findFirst()
        .orElseThrow(() -> new AssertionError(laid.what() + ": no end on a short edge: " + strip));
  }
}
