package frillbook.layout;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A lane between two cut lines, seen along and across.
 *
 * @param depth of the one line
 * @param next depth of the other
 * @param slant how much further along the strip's ends meet the other line
 * @param from where on the one line the first strip can begin
 * @param to where on it the last can end
 */
record ChalkedLane(Chalk chalk, double depth, double next, double slant, double from, double to) {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final int HALVINGS = 48;

  /**
   * One strip from edge to edge, or where {@code discs} bar it one from either edge; where they bar
   * both edges, one between them besides.
   */
  Stream<Polygon> strips(List<Coordinate> discs) {
    double room = to - from;
    Polygon whole = strip(from, to);
    List<Coordinate> inTheWay = discs.stream().filter(disc -> bars(disc, whole)).toList();
    if (inTheWay.isEmpty()) {
      return chalk.sheet().isDivided() ? divided(from, false) : Stream.of(whole);
    }
    if (chalk.sheet().isDivided()) {
      return divided(behind(inTheWay), true);
    }
    double first = longest(room, length -> strip(from, from + length), inTheWay);
    double last = longest(room, length -> strip(to - length, to), inTheWay);
    return Stream.of(
            DoubleStream.of(first)
                .filter(ChalkedLane::isLength)
                .mapToObj(l -> strip(from, from + l)),
            DoubleStream.of(last).filter(ChalkedLane::isLength).mapToObj(l -> strip(to - l, to)),
            between((from + to) / 2, room / 2, inTheWay))
        .flatMap(strips -> strips);
  }

  /** Strips of the full length end to end, from the far end back to {@code start}. */
  private Stream<Polygon> divided(double start, boolean withRest) {
    double full = chalk.sheet().fullLength();
    int count = (int) ((to - start) / full + Chalk.NOTHING);
    double rest = to - start - count * full;
    Stream<Polygon> whole =
        IntStream.rangeClosed(1, count)
            .mapToDouble(i -> to - i * full)
            .mapToObj(at -> strip(at, at + full));
    return withRest && isLength(rest)
        ? Stream.concat(whole, Stream.of(strip(start, start + rest)))
        : whole;
  }

  /** Strips begin square behind the last matching disc in the way. */
  private double behind(List<Coordinate> discs) {
    double radius = chalk.sheet().discDiameter() / 2;
    return discs.stream().mapToDouble(disc -> disc.x + radius).max().orElseThrow();
  }

  private Stream<Polygon> between(double middle, double most, List<Coordinate> discs) {
    double before = longest(most, length -> strip(middle - length, middle), discs);
    double behind = longest(most, length -> strip(middle, middle + length), discs);
    boolean barredAtBoth = isLength(most - before) && isLength(most - behind);
    return barredAtBoth && isLength(before + behind)
        ? Stream.of(strip(middle - before, middle + behind))
        : Stream.of();
  }

  private static boolean isLength(double length) {
    return length >= Chalk.NOTHING;
  }

  /** The one long side from its first two corners on. */
  private Polygon strip(double start, double end) {
    Coordinate corner = new Coordinate(start, depth);
    Polygon strip =
        GEOMETRY.createPolygon(
            new Coordinate[] {
              corner,
              new Coordinate(end, depth),
              new Coordinate(end + slant, next),
              new Coordinate(start + slant, next),
              corner
            });
    return (Polygon) chalk.frame().transform(strip);
  }

  /** By halving: a longer strip holds every shorter one. */
  private double longest(double room, DoubleFunction<Polygon> strip, List<Coordinate> discs) {
    double clear = 0;
    double barred = room;
    for (int i = 0; i < HALVINGS; i++) {
      double length = (clear + barred) / 2;
      Polygon tried = strip.apply(length);
      if (discs.stream().anyMatch(disc -> bars(disc, tried))) {
        barred = length;
      } else {
        clear = length;
      }
    }
    return clear;
  }

  private boolean bars(Coordinate disc, Polygon strip) {
    double radius = chalk.sheet().discDiameter() / 2 - Chalk.ON_THE_LINE;
    return strip.distance(GEOMETRY.createPoint(disc)) < radius;
  }
}
