package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.SharedSample;
import frillbook.brief.Grain;
import frillbook.layout.CutLayout;
import frillbook.layout.PlacedStrip;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** The drawn fabric against the places of the pieces, in JTS; lengths are the fabric's own. */
class FabricPictureTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private static final double NEAR = 1e-6;

  private record Laid(Drawn drawn, FabricPicture picture, CutLayout layout) {
    double scale() {
      return picture.fabricScale();
    }

    LineString cuts() {
      return line(
          picture.cutLines().fabricCuts().stream().map(p -> at(p.fabricCutX(), p.fabricCutY())));
    }

    LineString round(BesideStrips strips) {
      return line(strips.besidePoints().stream().map(p -> at(p.besideX(), p.besideY())));
    }

    double stripWidth() {
      return drawn.plan().sizes().strip().straightCutWidth();
    }

    /** Whether strips are drawn broader than a tint, and all of them. */
    boolean isTinted() {
      return stripWidth() > .016 * scale() && picture.fabricLeft() == 0;
    }

    /** Down the middles of the strips. */
    Geometry tints() {
      var combed = picture.cutLines().fabricCuts().stream().map(CutLines.CutPoint::fabricTint);
      return GEOMETRY.createMultiLineString(
          new LineString[] {
            tint(combed), tint(beside(picture.near())), tint(beside(picture.far()))
          });
    }

    private static Stream<Spot> beside(BesideStrips strips) {
      return strips.besidePoints().stream().map(BesideStrips.BesidePoint::tint);
    }

    private LineString tint(Stream<Spot> points) {
      return line(points.map(at -> at(at.x(), at.y())));
    }

    LineString stripEnds() {
      return line(picture.stripEnds().stream().map(p -> at(p.stripEndX(), p.stripEndY())));
    }

    private Coordinate at(double x, double y) {
      return new Coordinate(x * scale(), y * scale());
    }

    /** All lines but the edge of the fabric. */
    Geometry drawnLines() {
      return GEOMETRY.createMultiLineString(
          new LineString[] {cuts(), round(picture.near()), round(picture.far()), stripEnds()});
    }

    Polygon edge() {
      return GEOMETRY.createPolygon(
          picture.fabricEdges().stream()
              .limit(5)
              .map(p -> new Coordinate(p.fabricEdgeX() * scale(), p.fabricEdgeY() * scale()))
              .toArray(Coordinate[]::new));
    }

    Geometry lines() {
      return GEOMETRY.buildGeometry(List.of(drawnLines(), edge().getBoundary()));
    }

    /** Places are drawn to three decimals of the longer side. */
    double near() {
      return 1e-3 * scale();
    }

    boolean isBias() {
      return drawn.briefs().brief().fabric().grain() == Grain.BIAS;
    }

    String what() {
      return drawn.what();
    }
  }

  private static final int BRIEFS = SampleBriefs.layouts(80);

  private static final SharedSample<List<Laid>> SHARED =
      new SharedSample<>(FabricPictureTest::draw);

  private List<Laid> sample;

  private static List<Laid> draw() {
    return Drawn.sample(BRIEFS, 20250403).stream().flatMap(FabricPictureTest::laid).toList();
  }

  @BeforeEach
  void drawTheSample() {
    sample = SHARED.get();
    assertTrue(sample.size() > BRIEFS * 9 / 8, () -> "too few plans: " + sample.size());
    for (Grain grain : Grain.values()) {
      assertTrue(
          sample.stream().anyMatch(l -> l.drawn().briefs().brief().fabric().grain() == grain));
    }
  }

  private static Stream<Laid> laid(Drawn drawn) {
    var brief = drawn.briefs().brief();
    return CutLayout.of(brief, drawn.plan(), brief.fabric().grain()).stream()
        .map(layout -> new Laid(drawn, drawn.fabric(), layout));
  }

  private static LineString line(Stream<Coordinate> points) {
    return GEOMETRY.createLineString(points.toArray(Coordinate[]::new));
  }

  private static Polygon polygon(PlacedStrip strip) {
    return GEOMETRY.createPolygon(
        IntStream.rangeClosed(0, 4)
            .mapToObj(i -> strip.corners().get(i % 4))
            .map(p -> new Coordinate(p.x(), p.y()))
            .toArray(Coordinate[]::new));
  }

  @Test
  void theFabricIsAsLongAndAsWideAsTheLayouts() {
    for (Laid one : sample) {
      Envelope box = one.edge().getEnvelopeInternal();
      assertEquals(one.layout().length(), box.getMaxX(), one.near(), one.what());
      assertEquals(one.layout().width(), box.getMaxY(), one.near(), one.what());
      double fill = Math.max(box.getMaxX() / 2, box.getMaxY());
      assertEquals(1, fill / one.scale(), 0, one.what());
    }
  }

  @Test
  void noLineLeavesTheFabric() {
    for (Laid one : sample) {
      Envelope box = one.edge().getEnvelopeInternal();
      box.expandBy(one.near());
      assertTrue(box.contains(one.drawnLines().getEnvelopeInternal()), one.what());
    }
  }

  /**
   * Pieces shrunk by more than the tolerance, so that only lines through them count. Where only one
   * line in several is drawn, the way round a corner of the fabric may cut a strip.
   */
  @Test
  void noLineRunsThroughAStripOrADisc() {
    int compared = 0;
    for (Laid one : sample) {
      Geometry lines = one.drawnLines();
      PreparedGeometry sought = PreparedGeometryFactory.prepare(lines);
      for (PlacedStrip strip : one.layout().strips()) {
        if (strip.cut() && one.picture().cutLines().fabricEvery() == 1) {
          Geometry inside = polygon(strip).buffer(-one.near());
          assertTrue(!sought.intersects(inside), () -> one.what() + ": through " + strip);
          compared += inside.isEmpty() ? 0 : 1;
        }
      }
      for (var disc : one.layout().discs()) {
        var centre = new Coordinate(disc.centre().x(), disc.centre().y());
        double off = lines.distance(GEOMETRY.createPoint(centre));
        assertTrue(off > disc.diameter() / 2 - one.near(), () -> one.what() + ": through " + disc);
        compared++;
      }
    }
    assertTrue(compared > BRIEFS * 25 / 2, "too few pieces: " + compared);
  }

  /**
   * Both long sides lie on drawn lines, on straight grain both ends too, and on the bias the end
   * beside a disc. Other bias ends are trimmed after cutting.
   */
  @Test
  void everyStripThatIsCutIsDrawn() {
    int compared = 0;
    int beside = 0;
    int pastDiscs = 0;
    for (Laid one : sample) {
      if (one.picture().cutLines().fabricEvery() > 1 || one.picture().fabricLeft() > 0) {
        continue;
      }
      IndexedFacetDistance lines = new IndexedFacetDistance(one.lines());
      for (PlacedStrip strip : one.layout().strips()) {
        if (strip.cut()) {
          boolean past = one.isBias() && isPastDiscs(one, strip);
          boolean divided = past || one.isBias() && isBesideDisc(one, strip);
          Geometry outline = one.isBias() ? longSides(strip) : polygon(strip).getBoundary();
          assertTrue(
              !divided || isDrawn(endBesideDisc(one, strip), lines, one),
              () -> one.what() + ": without its end: " + strip);
          assertTrue(isDrawn(outline, lines, one), () -> one.what() + ": not drawn: " + strip);
          compared++;
          beside += divided ? 1 : 0;
          pastDiscs += past ? 1 : 0;
        }
      }
    }
    assertTrue(compared > BRIEFS * 25 / 4, "too few strips: " + compared);
    assertTrue(beside > BRIEFS / 4, "too few strips beside discs: " + beside);
    assertTrue(pastDiscs > BRIEFS / 4, "too few strips past discs: " + pastDiscs);
  }

  /** Looked at every tenth of the way along each side. */
  private static boolean isDrawn(Geometry outline, IndexedFacetDistance lines, Laid one) {
    double step = outline.getEnvelopeInternal().getDiameter() / 10;
    return Arrays.stream(Densifier.densify(outline, step).getCoordinates())
        .allMatch(at -> lines.isWithinDistance(GEOMETRY.createPoint(at), one.near()));
  }

  /**
   * The centre of every strip that is cut lies on a tint, but for a quarter of the strip's width.
   */
  @Test
  void everyStripThatIsCutIsTinted() {
    int compared = 0;
    for (Laid one : sample) {
      if (!one.isTinted() || one.picture().cutLines().fabricEvery() > 1) {
        continue;
      }
      Geometry tints = one.tints();
      double wide = one.stripWidth();
      for (PlacedStrip strip : one.layout().strips()) {
        if (strip.cut()) {
          double off = tints.distance(polygon(strip).getCentroid());
          assertTrue(off < wide / 4 + one.near(), () -> one.what() + ": " + off + " from " + strip);
          compared++;
        }
      }
    }
    assertTrue(compared > BRIEFS * 2, "too few strips: " + compared);
  }

  /** A tint leaves the middle of every disc alone. */
  @Test
  void noTintCoversADisc() {
    int compared = 0;
    for (Laid one : sample.stream().filter(Laid::isTinted).toList()) {
      Geometry tints = one.tints();
      for (var disc : one.layout().discs()) {
        compared++;
        var centre = new Coordinate(disc.centre().x(), disc.centre().y());
        double off = tints.distance(GEOMETRY.createPoint(centre));
        assertTrue(off > disc.diameter() / 3, () -> one.what() + ": " + off + " from " + disc);
      }
    }
    assertTrue(compared > BRIEFS / 3, "too few discs: " + compared);
  }

  @Test
  void noTintLeavesTheFabric() {
    for (Laid one : sample) {
      Envelope box = one.edge().getEnvelopeInternal();
      assertTrue(box.contains(one.tints().getEnvelopeInternal()), one.what());
    }
  }

  /** Six strokes from rim to rim, each as far to the right as it goes down. */
  @Test
  void everyMatchingDiscIsHatchedAt45Degrees() {
    int compared = 0;
    for (Laid one : sample) {
      List<RoundPoint> points = one.picture().fabricDiscPoints();
      for (int disc = 0; disc < one.picture().fabricDiscsDrawn(); disc++) {
        int strokes = 0;
        for (int row = 21; row < points.size(); row++) {
          Spot from = points.get(row - 1).discs().get(disc);
          Spot to = points.get(row).discs().get(disc);
          boolean slants = Math.abs(to.x() - from.x() + to.y() - from.y()) < 2.1e-3;
          double along = Math.abs(to.x() - from.x());
          strokes += slants && along > .9 * one.picture().fabricDiscRadius() ? 1 : 0;
        }
        assertEquals(6, strokes, one.what());
        compared++;
      }
    }
    assertTrue(compared > BRIEFS / 3, "too few discs: " + compared);
  }

  /**
   * As many gaps between lines as lanes with a strip in them: what stays over is not drawn. Only
   * past a line of discs the lines go on, whichever of the strips are cut.
   */
  @Test
  void noStripThatStaysOverIsDrawn() {
    int over = 0;
    for (Laid one : sample) {
      int past = one.picture().cutLines().fabricPast();
      int lanes = lanesUpToTheLastThatIsCut(one);
      assertEquals(lanes + past, one.picture().cutLines().fabricComb(), one.what());
      over += (int) one.layout().strips().stream().filter(strip -> !strip.cut()).count();
    }
    assertTrue(over > BRIEFS * 5 / 8, "too few strips stay over: " + over);
  }

  private static int lanesUpToTheLastThatIsCut(Laid one) {
    List<PlacedStrip> strips =
        one.layout().strips().stream()
            .filter(strip -> !isBesideDisc(one, strip))
            .filter(strip -> !isPastDiscs(one, strip))
            .toList();
    var cut =
        strips.stream()
            .filter(PlacedStrip::cut)
            .mapToDouble(strip -> lane(one, strip))
            .summaryStatistics();
    return (int)
        strips.stream()
            .mapToDouble(strip -> lane(one, strip))
            .filter(lane -> lane >= cut.getMin() && lane <= cut.getMax())
            .distinct()
            .count();
  }

  private static Geometry longSides(PlacedStrip strip) {
    Coordinate[] at = polygon(strip).getCoordinates();
    return GEOMETRY.createMultiLineString(
        new LineString[] {
          GEOMETRY.createLineString(Arrays.copyOfRange(at, 0, 2)),
          GEOMETRY.createLineString(Arrays.copyOfRange(at, 2, 4))
        });
  }

  private static Geometry endBesideDisc(Laid one, PlacedStrip strip) {
    Coordinate[] at = polygon(strip).getCoordinates();
    return Stream.of(new int[] {1, 2}, new int[] {3, 4})
        .map(i -> GEOMETRY.createLineString(new Coordinate[] {at[i[0]], at[i[1]]}))
        .min(Comparator.comparingDouble(end -> fromDisc(one, end)))
        .orElseThrow();
  }

  private static double fromDisc(Laid one, Geometry geometry) {
    return one.layout().discs().stream()
        .mapToDouble(
            disc ->
                geometry.distance(
                    GEOMETRY.createPoint(new Coordinate(disc.centre().x(), disc.centre().y()))))
        .min()
        .orElseThrow();
  }

  /** Whether a strip does not reach from edge to edge because a disc is in its way. */
  private static boolean isBesideDisc(Laid one, PlacedStrip strip) {
    if (!one.isBias()) {
      var grain = one.drawn().briefs().brief().fabric().grain();
      var layouts = one.drawn().plan().cutting().orElseThrow().layouts();
      var found = grain == Grain.LENGTHWISE ? layouts.lengthwise() : layouts.crosswise();
      double width = one.drawn().plan().sizes().strip().straightCutWidth();
      return lane(one, strip) > (found.orElseThrow().full() - 0.5) * width;
    }
    var plan = one.drawn().plan().cutting().orElseThrow().layouts().bias().orElseThrow();
    double fromNear = fromNear(one, strip);
    return fromNear < plan.near() || fromNear > plan.longer() + plan.shorter() - plan.far();
  }

  /** How far across the strips it begins. On the bias no two lie end to end from edge to edge. */
  private static double lane(Laid one, PlacedStrip strip) {
    if (one.isBias()) {
      return fromNear(one, strip);
    }
    Envelope box = polygon(strip).getEnvelopeInternal();
    return one.picture().fabricTurn() == 0 ? box.getMinY() : box.getMinX();
  }

  /** Whether a strip lies in the row of those that begin at the line through the first disc. */
  private static boolean isPastDiscs(Laid one, PlacedStrip strip) {
    int past = one.picture().cutLines().fabricPast();
    if (past == 0) {
      return false;
    }
    var plan = one.drawn().plan().cutting().orElseThrow().layouts().bias().orElseThrow();
    double step = one.drawn().plan().sizes().cutLineStep();
    double fromNear = fromNear(one, strip);
    return fromNear > plan.lineFirst() && fromNear < plan.lineFirst() + past * step;
  }

  /** Where the line along the strip's middle meets the edges, from the near corner. */
  private static double fromNear(Laid one, PlacedStrip strip) {
    var middle = polygon(strip).getCentroid();
    double width = one.layout().width();
    boolean lengthwise = one.picture().fabricTurn() == 0;
    return middle.getX() + (lengthwise ? middle.getY() : width - middle.getY());
  }

  @Test
  void everyDiscIsInItsPlace() {
    int compared = 0;
    for (Laid one : sample) {
      for (int i = 0; i < Math.min(12, one.layout().discs().size()); i++) {
        var placed = one.layout().discs().get(i);
        FabricDisc disc = one.picture().fabricDiscs().get(i);
        assertEquals(placed.centre().x(), disc.fabricDiscX() * one.scale(), NEAR, one.what());
        assertEquals(placed.centre().y(), disc.fabricDiscY() * one.scale(), NEAR, one.what());
        double radius = one.picture().fabricDiscRadius() * one.scale();
        assertEquals(placed.diameter() / 2, radius, NEAR, one.what());
        compared++;
      }
    }
    assertTrue(compared > BRIEFS * 5 / 4, "too few discs: " + compared);
  }

  @Test
  void whatIsNotDrawnIsTold() {
    int told = 0;
    for (Laid one : sample) {
      String title = one.drawn().title("fabric");
      boolean thinned = one.picture().cutLines().fabricComb() > 63;
      boolean left = one.picture().fabricLeft() > 0;
      assertEquals(thinned, title.contains("; one cut line in "), title);
      assertEquals(left, title.endsWith(" more not drawn"), title);
      assertTrue(left || one.layout().discs().size() <= 12, title);
      told += thinned || left ? 1 : 0;
    }
    assertTrue(told > BRIEFS / 16, "too few pictures leave something out: " + told);
  }

  /**
   * By hand: 301.7616 in of rows (computed from the exact spiral) × 2.5 and 1 are 755.404. Of a
   * strip of 53 in a join takes 1 1/4: 754.154 ÷ 51.75 = 14.6, 15 strips of 2 1/4, eight eighths of
   * a yard.
   */
  @Test
  void theTitleNamesStripsAndSize() {
    Drawn drawn = Drawn.of(Briefs.inch().with("matching_discs", 0)).orElseThrow();
    assertEquals(
        "15 strips crosswise: bought 36 × 54 in, usable 36 × 53 in", drawn.title("fabric"));
  }
}
