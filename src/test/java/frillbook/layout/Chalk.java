package frillbook.layout;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.NoninvertibleTransformationException;

/**
 * A fabric chalked from a {@link CuttingSheet} alone: the matching discs, then the cut lines, then
 * in every lane between two lines the longest strips that the edges and the matching discs leave.
 *
 * <p>On straight grain the first lane lies between the edge and the first mark; on the bias between
 * the first mark and the next. Only beside a matching disc in the corner do the lines go on behind
 * the first mark. A lane that a matching disc bars gives two strips, one from either edge.
 *
 * @param frame from a place along and across the lanes to one on the fabric
 * @param edge of the fabric that strips are cut from, seen along and across the lanes
 */
record Chalk(CuttingSheet sheet, AffineTransformation frame, Geometry edge) {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double ROOT2 = Math.sqrt(2);

  /** A piece this little over the edge or a rim is still on the fabric and clear of the disc. */
  static final double ON_THE_LINE = 1e-9;

  /**
   * So little that no chalk shows it; a lane that a matching disc bars at the very edge gives that.
   */
  static final double NOTHING = 1e-6;

  static Chalk of(CuttingSheet sheet) {
    AffineTransformation frame = frame(sheet);
    double length = sheet.stripsLength() + ON_THE_LINE;
    double width = sheet.fabricWidth() + ON_THE_LINE;
    Geometry edge = OnFabric.rectangle(-ON_THE_LINE, length, -ON_THE_LINE, width);
    return new Chalk(sheet, frame, back(frame).transform(edge));
  }

  private static AffineTransformation frame(CuttingSheet sheet) {
    return switch (sheet.grain()) {
      case LENGTHWISE -> new AffineTransformation();
      case CROSSWISE -> new AffineTransformation(0, 1, 0, 1, 0, 0);
      case BIAS ->
          new AffineTransformation(1 / ROOT2, 1 / ROOT2, 0, -1 / ROOT2, 1 / ROOT2, 0)
              .compose(fromCorner(sheet));
    };
  }

  /** From a place along the longer and the shorter side, both from the near corner. */
  private static AffineTransformation fromCorner(CuttingSheet sheet) {
    return sheet.stripsLength() >= sheet.fabricWidth()
        ? new AffineTransformation()
        : new AffineTransformation(0, 1, 0, -1, 0, sheet.fabricWidth());
  }

  private static AffineTransformation back(AffineTransformation frame) {
    try {
      return frame.getInverse();
    } catch (NoninvertibleTransformationException e) {
      throw new AssertionError(e);
    }
  }

  /** Centres of the matching discs. */
  List<Coordinate> discs() {
    return IntStream.range(0, sheet.matchingDiscs())
        .mapToObj(disc -> sheet.isBias() ? biasDisc(disc) : inLine(disc))
        .toList();
  }

  private Coordinate biasDisc(int disc) {
    if (disc < sheet.lineDiscs()) {
      return onLongEdge(disc);
    }
    return disc < sheet.cornerDiscs() ? inCorner(disc == 1) : inBand(disc - outsideBands());
  }

  /** Of the matching discs on the bias those that are in no straight band. */
  private int outsideBands() {
    return sheet.cornerDiscs() + sheet.lineDiscs();
  }

  /** Side by side from the near short edge, along the long edge that lies off the near corner. */
  private Coordinate onLongEdge(int disc) {
    double diameter = sheet.discDiameter();
    double shorter = Math.min(sheet.stripsLength(), sheet.fabricWidth());
    Coordinate place = new Coordinate((disc + 0.5) * diameter, shorter - diameter / 2);
    return placed(place, fromCorner(sheet));
  }

  /**
   * Lines of matching discs against each other, from the edge that the strips' ends lie on; the
   * second of two apart at the strips' other end, in zigzag at the far selvage too.
   */
  private Coordinate inLine(int disc) {
    double diameter = sheet.discDiameter();
    if (disc == 1 && (sheet.discsApart() || sheet.discsZigzag())) {
      double farEnd = edge.getEnvelopeInternal().getMaxX() - ON_THE_LINE - diameter / 2;
      double side =
          sheet.discsApart()
              ? sheet.matchingDiscStart() + diameter / 2
              : sheet.fabricWidth() - diameter / 2;
      return placed(new Coordinate(farEnd, side), frame);
    }
    double along = (disc % sheet.perLine() + 0.5) * diameter;
    double across = sheet.matchingDiscStart() + (disc / sheet.perLine() + 0.5) * diameter;
    return placed(new Coordinate(along, across), frame);
  }

  /** As many side by side as the fabric is wide for. */
  private Coordinate inBand(int disc) {
    double diameter = sheet.discDiameter();
    int abreast = (int) (sheet.fabricWidth() / diameter + NOTHING);
    return new Coordinate(
        sheet.matchingDiscStart() + (disc / abreast + 0.5) * diameter,
        (disc % abreast + 0.5) * diameter);
  }

  private Coordinate inCorner(boolean far) {
    double inward = sheet.discDiameter() / 2 + (far ? sheet.discPush() : sheet.nearDiscPush());
    double longer = Math.max(sheet.stripsLength(), sheet.fabricWidth());
    double shorter = Math.min(sheet.stripsLength(), sheet.fabricWidth());
    Coordinate place =
        far ? new Coordinate(longer - inward, shorter - inward) : new Coordinate(inward, inward);
    return placed(place, fromCorner(sheet));
  }

  private static Coordinate placed(Coordinate place, AffineTransformation onFabric) {
    return onFabric.transform(place, new Coordinate());
  }

  /** The first cut line. */
  LineString firstLine() {
    return lineAt(sheet.firstMark());
  }

  /** The line that meets the edge, on the bias both edges, at {@code mark}. */
  LineString lineAt(double mark) {
    return (LineString) frame.transform(line(across(mark)));
  }

  /** All cut lines, from edge to edge and beyond. */
  List<LineString> lines() {
    return depths().stream().map(depth -> (LineString) frame.transform(line(depth))).toList();
  }

  /**
   * Every strip there is room for; a band of matching discs is off the fabric before strips are
   * cut.
   */
  List<Polygon> strips() {
    List<Coordinate> discs = sheet.isBias() ? discs().subList(0, outsideBands()) : discs();
    List<Double> depths = depths();
    return IntStream.range(1, depths.size())
        .boxed()
        .flatMap(i -> lane(depths.get(i - 1), depths.get(i), discs))
        .toList();
  }

  /** How far across the lanes every cut line lies. */
  private List<Double> depths() {
    double least = sheet.cornerDiscs() > 0 ? 0 : sheet.firstMark();
    int behind = (int) ((sheet.firstMark() - least) / sheet.markStep());
    double most = edge.getEnvelopeInternal().getMaxY();
    DoubleStream marked =
        IntStream.iterate(-behind, i -> i + 1)
            .mapToDouble(i -> across(sheet.firstMark() + i * sheet.markStep()))
            .takeWhile(depth -> depth <= most);
    DoubleStream edgeFirst = sheet.isBias() ? DoubleStream.empty() : DoubleStream.of(0);
    return DoubleStream.concat(edgeFirst, marked).boxed().toList();
  }

  /** How deep a line lies that meets the edge, on the bias both edges, at {@code mark}. */
  private double across(double mark) {
    return sheet.isBias() ? mark / ROOT2 : mark;
  }

  private Stream<Polygon> lane(double depth, double next, List<Coordinate> discs) {
    double slant = sheet.slanting() ? next - depth : 0;
    Envelope first = edge.intersection(line(depth)).getEnvelopeInternal();
    Envelope second = edge.intersection(line(next)).getEnvelopeInternal();
    double from = Math.max(first.getMinX(), second.getMinX() - slant);
    double to = Math.min(first.getMaxX(), second.getMaxX() - slant);
    boolean gone = first.isNull() || second.isNull() || to - from < NOTHING;
    if (isPaired(depth, next)) {
      return Stream.of(whole(first, second));
    }
    return gone ? Stream.of() : new ChalkedLane(this, depth, next, slant, from, to).strips(discs);
  }

  /** Strips of pairs are counted from the first line off their corner. */
  private boolean isPaired(double depth, double next) {
    double beyond = sheet.stripsLength() + sheet.fabricWidth() - next * ROOT2;
    return sheet.isBias()
        && (sheet.isPairedNear(number(depth * ROOT2, sheet.firstMark()))
            || sheet.isPairedFar(number(beyond, sheet.lastMark())));
  }

  private long number(double mark, double first) {
    return Math.round((mark - first) / sheet.markStep()) + 1;
  }

  /** From edge to edge on both sides, as it lies. */
  private Polygon whole(Envelope first, Envelope second) {
    Coordinate corner = new Coordinate(first.getMinX(), first.getMinY());
    Polygon strip =
        GEOMETRY.createPolygon(
            new Coordinate[] {
              corner,
              new Coordinate(first.getMaxX(), first.getMinY()),
              new Coordinate(second.getMaxX(), second.getMinY()),
              new Coordinate(second.getMinX(), second.getMinY()),
              corner
            });
    return (Polygon) frame.transform(strip);
  }

  private LineString line(double depth) {
    Envelope box = edge.getEnvelopeInternal();
    return GEOMETRY.createLineString(
        new Coordinate[] {
          new Coordinate(box.getMinX() - 1, depth), new Coordinate(box.getMaxX() + 1, depth)
        });
  }
}
