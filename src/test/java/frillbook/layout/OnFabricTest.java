package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** The checks on placed pieces notice what they are there to notice. */
class OnFabricTest {
  private static final Polygon STRIP = OnFabric.rectangle(0, 2, 0, 40);

  @Test
  void touchingPiecesAreApart() {
    var next = OnFabric.rectangle(2, 4, 0, 40);
    assertEquals(1, OnFabric.assertApart(List.of(STRIP, next), 0, "side by side"));
  }

  @Test
  void piecesThatShareAThousandthAreNot() {
    var next = OnFabric.rectangle(1.999, 4, 0, 40);
    assertThrows(
        AssertionError.class, () -> OnFabric.assertApart(List.of(STRIP, next), 0, "overlapping"));
  }

  @Test
  void turningHidesNoOverlap() {
    var next = OnFabric.rectangle(1.999, 4, 0, 40);
    assertThrows(
        AssertionError.class,
        () -> OnFabric.assertApart(List.of(STRIP, next), Math.PI / 4, "overlapping"));
  }

  @Test
  void aPieceOverTheEdgeIsOffTheFabric() {
    OnFabric.assertInside(2, 40, List.of(STRIP), "just on it");
    assertThrows(
        AssertionError.class, () -> OnFabric.assertInside(1.999, 40, List.of(STRIP), "off it"));
  }

  @Test
  void aDiscIsDrawnInsideItsRim() {
    var disc = OnFabric.polygon(new PlacedDisc(new Point(10, 10), 20));
    assertEquals(Math.PI * 100, disc.getArea(), .001 * Math.PI * 100);
    assertEquals(0, disc.getEnvelopeInternal().getMinX(), 1e-12);
  }
}
