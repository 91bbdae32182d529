package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * No strip could be longer where it lies. Full strips and those in the corners of the fabric reach
 * from edge to edge; those beside matching discs begin at an edge and have their free end at a
 * matching disc. So every strip is grown by a hair at either end in turn.
 *
 * <p>Lengthwise strips that lie end to end are cut to a length and left out.
 *
 * <p>On the bias the fabric ends where a band of matching discs begins: the band is cut off across
 * the whole fabric before the strips, and what its matching discs leave of it is too narrow for
 * them.
 */
class MaximalTest {
  private static final double HAIR = 1e-3;

  /** A strip that crosses an edge or a rim by less than this only touches it. */
  private static final double TOUCH = 1e-9;

  private record Fabric(Geometry rectangle, List<PlacedDisc> discs) {
    static Fabric of(Laid laid) {
      double length = CuttingSheet.of(laid).stripsLength() + TOUCH;
      double width = laid.layout().width() + TOUCH;
      return new Fabric(OnFabric.rectangle(-TOUCH, length, -TOUCH, width), laid.layout().discs());
    }

    boolean hasRoomFor(Polygon strip) {
      return rectangle.covers(strip) && discs.stream().noneMatch(disc -> meets(strip, disc));
    }

    private static boolean meets(Polygon strip, PlacedDisc disc) {
      var centre = strip.getFactory().createPoint(OnFabric.coordinate(disc.centre()));
      return strip.distance(centre) < disc.diameter() / 2 - TOUCH;
    }
  }

  @Test
  void aStripGrownByAHairLeavesTheFabricOrMeetsAMatchingDisc() {
    int shorter = 0;
    for (Laid laid : Laid.sample()) {
      if (CuttingSheet.of(laid).isDivided()) {
        continue;
      }
      Fabric fabric = Fabric.of(laid);
      for (PlacedStrip strip : laid.layout().strips()) {
        grown(strip)
            .forEach(
                longer ->
                    assertTrue(
                        !fabric.hasRoomFor(longer),
                        () -> laid.what() + ": could be longer: " + strip));
        shorter += strip.full() ? 0 : 1;
      }
    }
    assertTrue(shorter > Laid.share(10_000), "too few shorter strips: " + shorter);
  }

  /** Longer at the beginning, and longer at the end. */
  private static Stream<Polygon> grown(PlacedStrip strip) {
    List<Point> at = strip.corners();
    return Stream.of(
            List.of(beyond(at, 1, 0), at.get(1), at.get(2), beyond(at, 2, 3)),
            List.of(at.get(0), beyond(at, 0, 1), beyond(at, 3, 2), at.get(3)))
        .map(
            corners ->
                new PlacedStrip(corners, strip.length() + HAIR, false, strip.paired(), false))
        .map(OnFabric::polygon);
  }

  /** A hair further than {@code to} on the way from {@code from}. */
  private static Point beyond(List<Point> corners, int from, int to) {
    Point start = corners.get(from);
    Point end = corners.get(to);
    double share = 1 + HAIR / Math.hypot(end.x() - start.x(), end.y() - start.y());
    return new Point(
        start.x() + share * (end.x() - start.x()), start.y() + share * (end.y() - start.y()));
  }
}
