package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.SharedSample;
import frillbook.layout.BaseLayout;
import frillbook.layout.PlacedDisc;
import frillbook.layout.PlacedRectangle;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.util.GeometricShapeFactory;

/** The drawn base fabric against the places of the pieces, in JTS; lengths are the fabric's own. */
class BasePictureTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private static final double NEAR = 1e-6;

  private record Laid(Drawn drawn, BasePicture picture, BaseLayout layout) {
    double scale() {
      return picture.baseFabricScale();
    }

    /** Points are drawn to three decimals each way, and moved by a millionth. */
    double near() {
      return (Math.hypot(.5e-3, .5e-3) + 2e-6) * scale();
    }

    /** The outline of drawn disc {@code disc}, from 0. */
    Polygon disc(int disc) {
      return polygon(round(), point -> point.discs().get(disc));
    }

    /** Once round; a hatch may follow. */
    List<RoundPoint> round() {
      return picture.baseDiscPoints().subList(0, 21);
    }

    Polygon back(int back) {
      return polygon(picture.backPoints(), point -> point.backs().get(back));
    }

    Polygon edge() {
      return polygon(picture.baseEdges().subList(0, 5), Function.identity());
    }

    private <P> Polygon polygon(List<P> points, Function<P, Spot> spot) {
      return GEOMETRY.createPolygon(places(points, spot));
    }

    private <P> Coordinate[] places(List<P> points, Function<P, Spot> spot) {
      return points.stream()
          .map(spot)
          .map(at -> new Coordinate(at.x() * scale(), at.y() * scale()))
          .toArray(Coordinate[]::new);
    }

    List<Polygon> discs() {
      return IntStream.range(0, picture.baseDiscsDrawn()).mapToObj(this::disc).toList();
    }

    List<Polygon> backs() {
      return IntStream.range(0, picture.baseBacksDrawn()).mapToObj(this::back).toList();
    }

    List<Polygon> pieces() {
      return Stream.concat(discs().stream(), backs().stream()).toList();
    }

    String what() {
      return drawn.what();
    }
  }

  private static final int BRIEFS = SampleBriefs.layouts(120);

  private static final SharedSample<List<Laid>> SHARED = new SharedSample<>(BasePictureTest::draw);

  private List<Laid> sample;

  /** Each brief with its own few cushions and with more than can be drawn. */
  private static List<Laid> draw() {
    return SampleBriefs.of(BRIEFS, 20250611).stream()
        .flatMap(briefs -> Stream.of(briefs, briefs.with("quantity", 19)))
        .flatMap(briefs -> Drawn.of(briefs).stream())
        .map(BasePictureTest::laid)
        .toList();
  }

  @BeforeEach
  void drawTheSample() {
    sample = SHARED.get();
    assertTrue(sample.size() > BRIEFS * 3 / 4, () -> "too few plans: " + sample.size());
    assertTrue(sample.stream().anyMatch(l -> besides(l) > 0), "no back beside a base");
    assertTrue(sample.stream().anyMatch(BasePictureTest::isInZigzag), "none in zigzag");
    assertTrue(sample.stream().anyMatch(l -> l.layout().length() > 3 * l.layout().width()));
  }

  private static boolean isInZigzag(Laid one) {
    return one.drawn().plan().base().base().baseInZigzag();
  }

  private static int besides(Laid one) {
    return one.drawn().plan().base().base().backs().beside();
  }

  private static Laid laid(Drawn drawn) {
    var layout = BaseLayout.of(drawn.briefs().brief());
    return new Laid(drawn, drawn.base(), layout);
  }

  private static Polygon polygon(PlacedRectangle back) {
    double x = back.corner().x();
    double y = back.corner().y();
    return (Polygon) GEOMETRY.toGeometry(new Envelope(x, x + back.length(), y, y + back.width()));
  }

  /** JTS's own polygon of 20 sides in the disc. */
  private static Polygon polygon(PlacedDisc disc) {
    var shape = new GeometricShapeFactory();
    shape.setNumPoints(20);
    shape.setCentre(new Coordinate(disc.centre().x(), disc.centre().y()));
    shape.setSize(disc.diameter());
    return shape.createCircle();
  }

  @Test
  void theEdgeIsTheBoughtFabricAfterWashing() {
    for (Laid one : sample) {
      double bought = one.drawn().plan().base().base().baseBuyLength();
      int widths = one.drawn().plan().sizes().baseWidth().baseWidths();
      double left =
          bought * (1 - one.drawn().briefs().brief().fabric().washShrinkLength()) / widths;
      Envelope box = one.edge().getEnvelopeInternal();
      assertEquals(left, box.getMaxX(), one.near(), one.what());
      assertEquals(one.layout().width(), box.getMaxY(), one.near(), one.what());
    }
  }

  /** Three units wide and one high, one of them filled. */
  @Test
  void theFabricFillsThePicture() {
    for (Laid one : sample) {
      Envelope box = one.edge().getEnvelopeInternal();
      double filled = Math.max(box.getMaxX() / 3, box.getMaxY()) / one.scale();
      assertEquals(1, filled, 1e-9, one.what());
    }
  }

  @Test
  void everyBaseIsInItsPlace() {
    int compared = 0;
    for (Laid one : sample) {
      assertEquals(Math.min(12, one.layout().discs().size()), one.discs().size(), one.what());
      for (int i = 0; i < one.discs().size(); i++) {
        PlacedDisc placed = one.layout().discs().get(i);
        Spot centre = one.picture().baseDiscs().get(i);
        assertEquals(placed.centre().x(), centre.x() * one.scale(), NEAR, one.what());
        assertEquals(placed.centre().y(), centre.y() * one.scale(), NEAR, one.what());
        double radius = one.picture().baseDiscRadius() * one.scale();
        assertEquals(placed.diameter() / 2, radius, NEAR, one.what());
        double off = DiscreteHausdorffDistance.distance(polygon(placed), one.disc(i));
        assertTrue(off < one.near(), () -> one.what() + ": " + off + " off: " + placed);
        compared++;
      }
    }
    assertTrue(compared > BRIEFS * 25 / 6, "too few bases: " + compared);
  }

  @Test
  void everyRectangleIsInItsPlace() {
    int compared = 0;
    for (Laid one : sample) {
      assertEquals(Math.min(12, one.layout().backs().size()), one.backs().size(), one.what());
      for (int i = 0; i < one.backs().size(); i++) {
        Polygon placed = polygon(one.layout().backs().get(i));
        Spot corner = one.picture().baseBacks().get(i);
        assertEquals(placed.getCoordinate().x, corner.x() * one.scale(), NEAR, one.what() + placed);
        assertEquals(placed.getCoordinate().y, corner.y() * one.scale(), NEAR, one.what() + placed);
        double off = DiscreteHausdorffDistance.distance(placed, one.back(i));
        assertTrue(off < one.near(), () -> one.what() + ": " + off + " off: " + placed);
        compared++;
      }
    }
    assertTrue(compared > BRIEFS * 25 / 6, "too few back pieces: " + compared);
  }

  /** A polygon of 20 sides has 10 sin(π/10)/π = .98363 of its circle's area. */
  @Test
  void theDrawnPolygonLiesInItsDiscAndCoversIt() {
    for (Laid one : sample) {
      Coordinate[] round = one.places(one.round(), RoundPoint::round);
      double radius = one.layout().discs().get(0).diameter() / 2;
      double share = Area.ofRing(round) / (Math.PI * radius * radius);
      assertEquals(.98363, share, 1e-5, one.what());
      for (Coordinate at : round) {
        assertEquals(radius, at.distance(new Coordinate(0, 0)), NEAR, one.what());
      }
    }
  }

  @Test
  void everyPieceLiesOnTheFabric() {
    for (Laid one : sample) {
      Envelope box = one.edge().getEnvelopeInternal();
      box.expandBy(one.near());
      for (Polygon piece : one.pieces()) {
        assertTrue(box.contains(piece.getEnvelopeInternal()), () -> one.what() + ": " + piece);
      }
    }
  }

  /** Pieces shrunk by what rounding may have added to them. */
  @Test
  void noTwoPiecesOverlap() {
    int compared = 0;
    for (Laid one : sample) {
      List<Geometry> pieces =
          one.pieces().stream().map(piece -> piece.buffer(-one.near())).toList();
      for (int i = 0; i < pieces.size(); i++) {
        for (int k = 0; k < i; k++) {
          String both = one.what() + ": " + one.pieces().get(i) + one.pieces().get(k);
          assertTrue(pieces.get(i).disjoint(pieces.get(k)), both);
          compared += pieces.get(i).isEmpty() ? 0 : 1;
        }
      }
    }
    assertTrue(compared > BRIEFS * 125 / 3, "too few pairs compared: " + compared);
  }

  @Test
  void nothingIsSeenOfPiecesThereAreNot() {
    int absent = 0;
    for (Laid one : sample) {
      for (int i = one.picture().baseDiscsDrawn(); i < 12; i++, absent++) {
        assertEquals(new Envelope(0, 0, 0, 0), one.disc(i).getEnvelopeInternal(), one.what());
      }
      for (int i = one.picture().baseBacksDrawn(); i < 12; i++, absent++) {
        assertEquals(new Envelope(0, 0, 0, 0), one.back(i).getEnvelopeInternal(), one.what());
      }
    }
    assertTrue(absent > BRIEFS * 25 / 6, "too few: " + absent);
  }

  @Test
  void whatIsNotDrawnIsTold() {
    for (Laid one : sample) {
      int pieces = one.layout().discs().size() + one.layout().backs().size();
      int left = one.picture().baseDiscsLeft() + one.picture().baseBacksLeft();
      assertEquals(pieces, one.pieces().size() + left, one.what());
      String title = one.drawn().title("base_fabric");
      assertEquals(left > 0, title.endsWith(" more not drawn"), title);
    }
  }

  /** How many strokes at 45° from rim to rim, from upper left to lower right, a disc has. */
  private static long strokes(BasePicture picture, int disc) {
    return IntStream.range(21, 26)
        .filter(
            row -> {
              Spot from = picture.baseDiscPoints().get(row - 1).discs().get(disc);
              Spot to = picture.baseDiscPoints().get(row).discs().get(disc);
              double along = to.x() - from.x();
              return Math.abs(along) > picture.baseDiscRadius() / 2
                  && Math.abs(along + to.y() - from.y()) < 2.1e-3;
            })
        .count();
  }

  /** Two bases, two matching discs, two backs in discs. */
  @Test
  void matchingDiscsAloneAreHatched() {
    Briefs two =
        Briefs.inch()
            .with("quantity", 2)
            .with("base_fabric_width", 37)
            .with("matching_disc_fabric", "base");
    BasePicture picture = Drawn.of(two).orElseThrow().base();
    List<Long> strokes = IntStream.range(0, 6).mapToObj(disc -> strokes(picture, disc)).toList();
    assertEquals(List.of(0L, 0L, 3L, 3L, 0L, 0L), strokes);
  }

  /** The two lines beside the selvages, 12 thousandths of the picture's height from them. */
  @Test
  void selvagesAreDoubled() {
    List<Spot> edges = Drawn.of(Briefs.inch()).orElseThrow().base().baseEdges();
    assertEquals(9, edges.size());
    assertEquals(new Spot(edges.get(1).x(), .012), edges.get(6));
    assertEquals(new Spot(0, .012), edges.get(5));
    assertEquals(.988, edges.get(7).y(), 1e-9);
    assertEquals(new Spot(0, edges.get(7).y()), edges.get(8));
  }

  private static String title(Briefs briefs) {
    return Drawn.of(briefs).orElseThrow().title("base_fabric");
  }

  /**
   * By hand: base 19 7/8 in, back 19 in beside it; five steps of 4 1/2 in hold one row. The fabric
   * of 44 in has 1/2 in of selvage on each side.
   */
  @Test
  void theTitleNamesPiecesAndSize() {
    assertEquals(
        "1 base and 1 back piece: bought 22 1/2 × 44 in, usable 22 1/2 × 43 in",
        title(Briefs.inch()));
  }

  /**
   * By hand: two bases, two matching discs and two backs, one to a line on 36 in, 19.875 + 5√135 =
   * 77.97 in, 18 steps.
   */
  @Test
  void theTitleNamesMatchingDiscsOfBaseFabric() {
    Briefs two =
        Briefs.inch()
            .with("quantity", 2)
            .with("base_fabric_width", 37)
            .with("matching_disc_fabric", "base");
    assertEquals(
        "2 bases, 2 matching discs and 2 back pieces: bought 81 × 37 in, usable 81 × 36 in",
        title(two));
  }

  /**
   * By hand: four rows of two bases at 19 7/8 in, one half of 10 1/8 in beside the last, thirteen
   * more in seven rows: 150 3/8 in, 34 steps of 4 1/2 in. The picture has room for twelve.
   */
  @Test
  void theTitleSaysThatNotAllIsDrawn() {
    Briefs zipped = Briefs.inch().with("quantity", 7).with("back_style", "zipped_halves");
    assertEquals(
        "7 bases and 14 back pieces: bought 153 × 44 in, usable 153 × 43 in; 2 more not drawn",
        title(zipped));
  }
}
