package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.Grain;
import frillbook.offcut.Offcut;
import frillbook.offcut.Place;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** The piece told to be left over, laid by JTS where the words say, over the random sample. */
class RemnantTest {
  private static final double CLOSE = 1e-6;

  private List<Laid> sample;
  private List<Laid> leaving;

  @BeforeEach
  void layOutTheSample() {
    sample = Laid.sample();
    leaving = sample.stream().filter(laid -> offcut(laid).remnantPlace() != Place.NOWHERE).toList();
  }

  private static Offcut offcut(Laid laid) {
    return laid.plan().cutting().orElseThrow().cut().orElseThrow().offcut();
  }

  @Test
  void theSampleLeavesPiecesInEveryPlace() {
    Map<Place, Integer> seen = new EnumMap<>(Place.class);
    sample.forEach(laid -> seen.merge(offcut(laid).remnantPlace(), 1, Integer::sum));
    Stream.of(Place.values())
        .filter(place -> place != Place.NOWHERE)
        .forEach(
            place ->
                assertTrue(
                    seen.getOrDefault(place, 0) >= Laid.share(3), () -> place + ": " + seen));
  }

  @Test
  void whatIsLeftLiesOnTheFabric() {
    for (Laid laid : leaving) {
      CutLayout layout = laid.layout();
      List<Polygon> pieces = places(laid);
      OnFabric.assertInside(layout.length(), layout.width(), pieces.subList(0, 1), laid.what());
    }
  }

  @Test
  void whatIsLeftTouchesNoStripThatIsCutAndNoMatchingDisc() {
    for (Laid laid : leaving) {
      boolean free = places(laid).stream().anyMatch(piece -> isFree(laid, piece));
      assertTrue(free, () -> laid.what() + offcut(laid));
    }
  }

  private static boolean isFree(Laid laid, Polygon piece) {
    List<PlacedStrip> strips = laid.layout().strips();
    boolean clear =
        IntStream.range(0, strips.size())
            .filter(i -> strips.get(i).cut())
            .noneMatch(i -> laid.polygons().get(i).intersects(piece));
    return clear
        && laid.layout().discs().stream()
            .allMatch(
                disc ->
                    piece.distance(
                            piece.getFactory().createPoint(OnFabric.coordinate(disc.centre())))
                        >= disc.diameter() / 2 - CLOSE);
  }

  /** Drawn in by a hair; beside matching discs it may be anywhere across the strips. */
  private static List<Polygon> places(Laid laid) {
    Offcut left = offcut(laid);
    CutLayout layout = laid.layout();
    double x = layout.length() - left.remnantLength();
    double y = layout.width() - left.remnantWidth();
    return switch (left.remnantPlace()) {
      case NOWHERE -> List.of();
      case NEAR_CORNER -> List.of(corner(laid, false));
      case FAR_CORNER -> List.of(corner(laid, true));
      case LAST_BAND, BANDS -> List.of(piece(left, x, y));
      case END -> List.of(piece(left, 0, 0));
      case BEYOND -> List.of(straight(laid, 0, acrossStrips(laid) - stack(laid)));
      case BEHIND -> List.of(straight(laid, 0, cutLanes(laid)));
      case BESIDE -> beside(laid);
    };
  }

  private static boolean isLengthwise(Laid laid) {
    return laid.brief().fabric().grain() == Grain.LENGTHWISE;
  }

  private static double acrossStrips(Laid laid) {
    return isLengthwise(laid) ? laid.layout().width() : laid.layout().length();
  }

  private static double stack(Laid laid) {
    Offcut left = offcut(laid);
    return isLengthwise(laid) ? left.remnantWidth() : left.remnantLength();
  }

  /** How far the full strips that are cut reach. */
  private static double cutLanes(Laid laid) {
    return laid.layout().strips().stream()
        .filter(strip -> strip.cut() && strip.full())
        .flatMap(strip -> strip.corners().stream())
        .mapToDouble(corner -> isLengthwise(laid) ? corner.y() : corner.x())
        .max()
        .orElse(0);
  }

  /** From the far end of the strips, or between two discs apart; from some lane on. */
  private static List<Polygon> beside(Laid laid) {
    Offcut left = offcut(laid);
    double run = isLengthwise(laid) ? left.remnantLength() : left.remnantWidth();
    double extent = isLengthwise(laid) ? laid.layout().length() : laid.layout().width();
    double start =
        extent
            - run
            - (laid.cut().discsApart() ? laid.plan().sizes().discs().baseCutDiameter() : 0);
    double room = acrossStrips(laid) - stack(laid);
    int lanes = (int) Math.floor(room / laid.stripWidth() + CLOSE);
    return IntStream.rangeClosed(0, lanes)
        .mapToObj(lane -> straight(laid, start, lane * laid.stripWidth()))
        .toList();
  }

  private static Polygon straight(Laid laid, double run, double stack) {
    Offcut left = offcut(laid);
    return isLengthwise(laid) ? piece(left, run, stack) : piece(left, stack, run);
  }

  private static Polygon piece(Offcut left, double x, double y) {
    return OnFabric.rectangle(
        x + CLOSE, x + left.remnantLength() - CLOSE, y + CLOSE, y + left.remnantWidth() - CLOSE);
  }

  /**
   * The piece in the corner of the fabric, less its bands, that the first cut line is counted from,
   * or in the one opposite.
   */
  private static Polygon corner(Laid laid, boolean far) {
    Offcut left = offcut(laid);
    var plan = laid.plan().cutting().orElseThrow().layouts().bias().orElseThrow();
    BiasCorner corner =
        new BiasCorner(plan, far, laid.layout().width(), laid.stripWidth(), laid.slanting());
    double longer = Math.max(left.remnantLength(), left.remnantWidth());
    double shorter = Math.min(left.remnantLength(), left.remnantWidth());
    Coordinate one = OnFabric.coordinate(corner.at(0, 0));
    Coordinate other = OnFabric.coordinate(corner.at(longer, shorter));
    return OnFabric.rectangle(
        Math.min(one.x, other.x) + CLOSE,
        Math.max(one.x, other.x) - CLOSE,
        Math.min(one.y, other.y) + CLOSE,
        Math.max(one.y, other.y) - CLOSE);
  }

  private static Offcut of(Briefs briefs, Grain grain) {
    return offcut(Laid.of(briefs, grain).orElseThrow());
  }

  /** As deep as a matching disc, and as wide as those of the last line leave of the fabric. */
  @Test
  void besideTheLastLineOfABandTheRestOfTheWidthIsLeft() {
    for (Laid laid : leaving) {
      Offcut left = offcut(laid);
      if (left.remnantPlace() == Place.LAST_BAND) {
        CutLayout layout = laid.layout();
        double disc = layout.discs().get(0).diameter();
        double line = layout.length() - disc;
        long last = layout.discs().stream().filter(d -> d.centre().x() > line).count();
        assertLeft(disc, layout.width() - last * disc, Place.LAST_BAND, left);
      }
    }
  }

  private static void assertLeft(double length, double width, Place place, Offcut left) {
    assertEquals(place, left.remnantPlace());
    assertEquals(length, left.remnantLength(), CLOSE);
    assertEquals(width, left.remnantWidth(), CLOSE);
  }

  /**
   * By hand: 755.40 in of strip, a French join takes 2 (1/4 + 3/8) = 1.25, a strip of 53 in adds
   * 51.75: (755.40 − 1.25) ÷ 51.75 = 14.57, so 15 strips 2 1/4 wide, 33 3/4 of 36 in.
   */
  @Test
  void withoutMatchingDiscsCrosswiseStripsLeaveWhatIsBehindThem() {
    Offcut left = of(Briefs.inch().with("matching_discs", 0), Grain.CROSSWISE);
    assertLeft(2.25, 53, Place.BEHIND, left);
    assertEquals(53, left.tableLength(), CLOSE);
  }

  /** A bias line from one long edge to the other: √2 times the shorter side of the fabric. */
  @Test
  void onTheBiasTheTableHoldsTheLongestCutLine() {
    Laid laid = Laid.of(Briefs.inch(), Grain.BIAS).orElseThrow();
    double shorter = Math.min(laid.layout().length(), laid.layout().width());
    assertEquals(Math.sqrt(2) * shorter, offcut(laid).tableLength(), CLOSE);
  }

  @Test
  void noStripThatIsCutIsLongerThanTheTable() {
    for (Laid laid : sample) {
      double table = offcut(laid).tableLength();
      laid.layout().strips().stream()
          .filter(PlacedStrip::cut)
          .forEach(strip -> assertTrue(strip.length() <= table + CLOSE, laid.what()));
    }
  }
}
