package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.SharedSample;
import frillbook.measure.LengthUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * What a person chalks by the figures on the sheet Cutting alone, against the pieces listed there
 * and against the layout that is drawn. The lengths in the chalk are found by JTS.
 */
class ChalkTest {
  private static final double CLOSE = 1e-6;
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private record Chalked(Laid laid, CuttingSheet sheet, Chalk chalk, List<Polygon> strips) {
    static Chalked of(Laid laid) {
      CuttingSheet sheet = CuttingSheet.of(laid);
      Chalk chalk = Chalk.of(sheet);
      return new Chalked(laid, sheet, chalk, chalk.strips());
    }

    List<Polygon> drawnStrips() {
      return laid.polygons().subList(0, laid.layout().strips().size());
    }

    String what() {
      return laid.what();
    }
  }

  private static final SharedSample<List<Chalked>> SAMPLE =
      new SharedSample<>(() -> Laid.sample().stream().map(Chalked::of).toList());

  private List<Chalked> chalked;

  @BeforeEach
  void chalkTheSample() {
    chalked = SAMPLE.get();
  }

  @Test
  void theSampleHoldsWhatMakersMeet() {
    Map<String, Predicate<Chalked>> kinds =
        Map.of(
            "slanting ends and two matching discs in corners",
            c -> c.sheet().slanting() && c.sheet().cornerDiscs() == 2,
            "square ends and two matching discs in corners",
            c -> !c.sheet().slanting() && c.sheet().cornerDiscs() == 2,
            "one matching disc in a corner",
            c -> c.sheet().cornerDiscs() == 1,
            "a near matching disc moved in",
            c -> c.sheet().nearDiscPush() > 0,
            "bias and a band of matching discs",
            c -> c.sheet().isBias() && c.sheet().matchingDiscs() > c.sheet().cornerDiscs(),
            "several lines of matching discs",
            c -> !c.sheet().isBias() && c.sheet().matchingDiscs() > c.sheet().perLine(),
            "no matching discs",
            c -> c.sheet().matchingDiscs() == 0,
            "several cushions",
            c -> c.laid().brief().cushion().quantity() > 1,
            "selvages and washed fabric",
            c ->
                c.laid().brief().fabric().selvage() > 0
                    && c.laid().brief().fabric().washShrinkLength() > 0,
            "centimetres",
            c -> c.laid().brief().unit() == LengthUnit.CM);
    kinds.forEach(
        (kind, holds) -> {
          long count = chalked.stream().filter(holds).count();
          assertTrue(count >= Laid.share(10), () -> kind + ": " + count);
        });
  }

  /** Every full strip and every shorter one has a place of its own, to the length. */
  @Test
  void thePiecesListedAreChalked() {
    int found = 0;
    for (Chalked one : chalked) {
      List<Double> free = new ArrayList<>(one.strips().stream().map(ChalkTest::length).toList());
      for (double listed : listed(one.sheet())) {
        int place =
            IntStream.range(0, free.size())
                .filter(i -> Math.abs(free.get(i) - listed) < CLOSE)
                .findFirst()
                .orElseThrow(() -> new AssertionError(one.what() + ": not chalked: " + listed));
        free.remove(place);
        found++;
      }
    }
    assertTrue(found > Laid.share(40_000), "too few strips: " + found);
  }

  private static List<Double> listed(CuttingSheet sheet) {
    List<Double> lengths = new ArrayList<>(sheet.shorter());
    lengths.addAll(Collections.nCopies(sheet.fullStrips(), sheet.fullLength()));
    return lengths;
  }

  /** Of a strip of a pair the mean of its sides. */
  private static double length(Polygon strip) {
    Coordinate[] corners = strip.getCoordinates();
    return (corners[0].distance(corners[1]) + corners[2].distance(corners[3])) / 2;
  }

  @Test
  void chalkedStripsAreAsWideAsListed() {
    for (Chalked one : chalked) {
      for (Polygon strip : one.strips()) {
        assertEquals(one.sheet().stripWidth(), strip.getArea() / length(strip), CLOSE, one.what());
      }
    }
  }

  @Test
  void everyStripDrawnIsChalkedInTheSamePlace() {
    int seen = 0;
    for (Chalked one : chalked) {
      List<Polygon> free = new ArrayList<>(one.strips());
      for (Polygon drawn : one.drawnStrips()) {
        OptionalInt place = place(drawn, free);
        assertTrue(place.isPresent(), () -> one.what() + ": not chalked: " + drawn);
        free.remove(place.getAsInt());
        seen++;
      }
    }
    assertTrue(seen > Laid.share(40_000), "too few strips: " + seen);
  }

  private static OptionalInt place(Polygon drawn, List<Polygon> free) {
    return IntStream.range(0, free.size()).filter(i -> isSame(drawn, free.get(i))).findFirst();
  }

  /** Boxes first, which are quick. */
  private static boolean isSame(Polygon one, Polygon other) {
    var box = one.getEnvelopeInternal();
    var otherBox = other.getEnvelopeInternal();
    return Math.abs(box.getMinX() - otherBox.getMinX()) < CLOSE
        && Math.abs(box.getMinY() - otherBox.getMinY()) < CLOSE
        && DiscreteHausdorffDistance.distance(one, other) < CLOSE;
  }

  @Test
  void everyMatchingDiscDrawnIsChalkedInTheSamePlace() {
    int seen = 0;
    for (Chalked one : chalked) {
      List<Coordinate> discs = one.chalk().discs();
      List<PlacedDisc> drawn = one.laid().layout().discs();
      assertEquals(drawn.size(), discs.size(), one.what());
      for (int i = 0; i < discs.size(); i++) {
        double apart = OnFabric.coordinate(drawn.get(i).centre()).distance(discs.get(i));
        assertEquals(0, apart, CLOSE, one.what());
        assertEquals(drawn.get(i).diameter(), one.sheet().discDiameter(), CLOSE, one.what());
        seen++;
      }
    }
    assertTrue(seen > Laid.share(5_000), "too few matching discs: " + seen);
  }

  /** The first line touches the matching disc in the corner it is counted from. */
  @Test
  void theFirstCutLineTouchesTheMatchingDiscInItsCorner() {
    int touched = 0;
    for (Chalked one : chalked) {
      if (one.sheet().cornerDiscs() >= 1) {
        assertTouches(one, one.chalk().discs().get(0), one.chalk().firstLine());
        touched++;
      }
    }
    assertTrue(touched > Laid.share(150), "too few matching discs in corners: " + touched);
  }

  @Test
  void aCutLineTouchesTheMatchingDiscInTheFarCorner() {
    int touched = 0;
    for (Chalked one : chalked) {
      if (one.sheet().cornerDiscs() == 2) {
        assertTouches(one, one.chalk().discs().get(1), lastLineBefore(one));
        touched++;
      }
    }
    assertTrue(touched > Laid.share(120), "too few matching discs in far corners: " + touched);
  }

  @Test
  void aCutLineTouchesTheFirstMatchingDiscOfALine() {
    int touched = 0;
    for (Chalked one : chalked) {
      if (one.sheet().lineDiscs() > 0) {
        assertTouches(one, one.chalk().discs().get(0), one.chalk().lineAt(one.sheet().lineMark()));
        touched++;
      }
    }
    assertTrue(touched > Laid.share(50), "too few lines of matching discs: " + touched);
  }

  /** Of the lines that do not run through the far matching disc, the one nearest to it. */
  private static Geometry lastLineBefore(Chalked one) {
    var centre = GEOMETRY.createPoint(one.chalk().discs().get(1));
    double radius = one.sheet().discDiameter() / 2;
    return one.chalk().lines().stream()
        .filter(line -> line.distance(centre) > radius - CLOSE)
        .min(Comparator.comparingDouble(line -> line.distance(centre)))
        .orElseThrow();
  }

  private static void assertTouches(Chalked one, Coordinate centre, Geometry line) {
    double radius = one.sheet().discDiameter() / 2;
    assertEquals(radius, line.distance(GEOMETRY.createPoint(centre)), CLOSE, one.what());
  }
}
