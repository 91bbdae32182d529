package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Placed pieces as JTS sees them. Areas and distances are JTS's own. */
final class OnFabric {
  static final double TOLERANCE = 1e-6;

  /** So many that the polygon drawn inside a circle keeps 99.9 % of its area. */
  private static final int SIDES = 96;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private OnFabric() {}

  static Polygon polygon(PlacedStrip strip) {
    List<Point> corners = strip.corners();
    return GEOMETRY.createPolygon(
        Stream.concat(corners.stream(), Stream.of(corners.get(0)))
            .map(OnFabric::coordinate)
            .toArray(Coordinate[]::new));
  }

  static Polygon polygon(PlacedDisc disc) {
    Coordinate[] rim = new Coordinate[SIDES + 1];
    for (int i = 0; i < SIDES; i++) {
      double angle = 2 * Math.PI * i / SIDES;
      rim[i] =
          new Coordinate(
              disc.centre().x() + disc.diameter() / 2 * Math.cos(angle),
              disc.centre().y() + disc.diameter() / 2 * Math.sin(angle));
    }
    rim[SIDES] = rim[0];
    return GEOMETRY.createPolygon(rim);
  }

  static Polygon polygon(PlacedRectangle piece) {
    return rectangle(
        piece.corner().x(),
        piece.corner().x() + piece.length(),
        piece.corner().y(),
        piece.corner().y() + piece.width());
  }

  static Polygon rectangle(double x1, double x2, double y1, double y2) {
    return (Polygon) GEOMETRY.toGeometry(new Envelope(x1, x2, y1, y2));
  }

  static Coordinate coordinate(Point point) {
    return new Coordinate(point.x(), point.y());
  }

  static void assertInside(double length, double width, List<Polygon> pieces, String what) {
    Geometry fabric = rectangle(-TOLERANCE, length + TOLERANCE, -TOLERANCE, width + TOLERANCE);
    pieces.forEach(
        piece -> assertTrue(fabric.covers(piece), () -> what + ": off the fabric: " + piece));
  }

  /**
   * Asserts that no two overlap; how many neighbours were compared. Strips fill their envelopes, by
   * which neighbours are found, when turned by {@code angle}.
   */
  static int assertApart(List<Polygon> pieces, double angle, String what) {
    STRtree tree = new STRtree();
    var turn = AffineTransformation.rotationInstance(angle);
    List<Geometry> turned = pieces.stream().map(turn::transform).toList();
    for (int i = 0; i < turned.size(); i++) {
      tree.insert(turned.get(i).getEnvelopeInternal(), i);
    }
    int compared = 0;
    for (int i = 0; i < turned.size(); i++) {
      for (Object other : tree.query(turned.get(i).getEnvelopeInternal())) {
        if ((Integer) other > i) {
          assertApart(pieces.get(i), pieces.get((Integer) other), what);
          compared++;
        }
      }
    }
    return compared;
  }

  private static void assertApart(Polygon one, Polygon other, String what) {
    double shared = OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION).getArea();
    assertEquals(0, shared, TOLERANCE, () -> what + ": overlap of " + one + " and " + other);
  }
}
