package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.plan.CutTotals;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;

/** Every placed piece against JTS, over briefs drawn at random in all three grains. */
class CutLayoutTest {
  private static final double CLOSE = 1e-6;

  private List<Laid> sample;

  @BeforeEach
  void layOutTheSample() {
    sample = Laid.sample();
  }

  @Test
  void theSampleHoldsEveryWayOfLayingOut() {
    Map<Grain, Integer> counts = new EnumMap<>(Grain.class);
    sample.forEach(laid -> counts.merge(laid.brief().fabric().grain(), 1, Integer::sum));
    for (Grain grain : Grain.values()) {
      assertTrue(counts.get(grain) >= Laid.share(200), () -> grain + ": " + counts);
    }
    assertTrue(sample.stream().filter(Laid::slanting).count() >= Laid.share(100));
    assertTrue(
        sample.stream().mapToInt(laid -> laid.polygons().size()).sum() >= Laid.share(10_000));
  }

  @Test
  void everyPieceLiesOnTheFabric() {
    for (Laid laid : sample) {
      CutLayout layout = laid.layout();
      OnFabric.assertInside(layout.length(), layout.width(), laid.polygons(), laid.what());
      for (PlacedDisc disc : layout.discs()) {
        double radius = disc.diameter() / 2 - CLOSE;
        Point centre = disc.centre();
        assertTrue(
            centre.x() >= radius
                && centre.y() >= radius
                && layout.length() - centre.x() >= radius
                && layout.width() - centre.y() >= radius,
            () -> laid.what() + ": off the fabric: " + disc);
      }
    }
  }

  @Test
  void noTwoPiecesOverlap() {
    int compared = 0;
    for (Laid laid : sample) {
      compared += OnFabric.assertApart(laid.polygons(), laid.angle(), laid.what());
    }
    assertTrue(compared > Laid.share(10_000), "too few neighbours compared: " + compared);
  }

  @Test
  void discsKeepTheirWholeRadiusFreeOfOthers() {
    for (Laid laid : sample) {
      List<PlacedDisc> discs = laid.layout().discs();
      for (int i = 0; i < discs.size(); i++) {
        assertFree(laid, discs.get(i), discs.subList(i + 1, discs.size()));
      }
    }
  }

  private static void assertFree(Laid laid, PlacedDisc disc, List<PlacedDisc> others) {
    Coordinate centre = OnFabric.coordinate(disc.centre());
    for (PlacedDisc other : others) {
      double apart = centre.distance(OnFabric.coordinate(other.centre()));
      assertTrue(apart >= disc.diameter() - CLOSE, () -> laid.what() + disc + other);
    }
    for (Polygon strip : laid.polygons().subList(0, laid.layout().strips().size())) {
      double apart = strip.distance(strip.getFactory().createPoint(centre));
      assertTrue(apart >= disc.diameter() / 2 - CLOSE, () -> laid.what() + disc + strip);
    }
  }

  @Test
  void everyStripHasTheCutWidthAndItsStatedLength() {
    for (Laid laid : sample) {
      for (PlacedStrip strip : laid.layout().strips()) {
        assertStated(laid, strip);
      }
    }
  }

  private static void assertStated(Laid laid, PlacedStrip strip) {
    Coordinate[] corners = OnFabric.polygon(strip).getCoordinates();
    var side = new LineSegment(corners[0], corners[1]);
    var opposite = new LineSegment(corners[3], corners[2]);
    String what = laid.what() + strip;
    assertEquals(strip.length(), (side.getLength() + opposite.getLength()) / 2, CLOSE, what);
    double leans = strip.paired() ? 2 * laid.stripWidth() : 0;
    assertEquals(leans, Math.abs(side.getLength() - opposite.getLength()), CLOSE, what);
    assertEquals(laid.stripWidth(), side.distancePerpendicular(corners[2]), CLOSE, what);
    assertEquals(laid.stripWidth(), side.distancePerpendicular(corners[3]), CLOSE, what);
    double end = corners[1].distance(corners[2]);
    double expected = laid.slanting() ? laid.stripWidth() * Math.sqrt(2) : laid.stripWidth();
    assertEquals(expected, end, CLOSE, what);
  }

  @Test
  void allSlantingStripsSlantTheSameWay() {
    int seen = 0;
    for (Laid laid : sample.stream().filter(Laid::slanting).toList()) {
      for (PlacedStrip strip : laid.layout().strips()) {
        if (!strip.paired()) {
          assertEquals(1, slant(OnFabric.polygon(strip)), () -> laid.what() + strip);
          seen++;
        }
      }
    }
    assertTrue(seen > Laid.share(1000), "too few slanting strips: " + seen);
  }

  /** Next to each other in length, so that they can be listed so. */
  @Test
  void twoCornerStripsOfAPairMakeAStripThatSlantsLikeTheOthers() {
    int seen = 0;
    for (Laid laid : sample) {
      List<PlacedStrip> paired = paired(laid);
      assertEquals(0, paired.size() % 2, laid.what());
      for (int i = 0; i < paired.size(); i += 2) {
        CornerPair pair = new CornerPair(paired.get(i), paired.get(i + 1), laid);
        assertEquals(pair.length(), pair.joined().length(), CLOSE, laid.what());
        assertEquals(1, slant(pair.joined().outline()), laid.what());
        seen++;
      }
    }
    assertTrue(seen > Laid.share(500), "too few pairs: " + seen);
  }

  /** The last alone may be enough, recut at one end. */
  @Test
  void allStripsOfPairsButTheLastAreCutWithTheirPartners() {
    int alone = 0;
    for (Laid laid : sample) {
      List<PlacedStrip> paired = paired(laid);
      int lacking = 0;
      for (int i = 0; i < paired.size(); i += 2) {
        lacking += paired.get(i).cut() == paired.get(i + 1).cut() ? 0 : 1;
      }
      assertTrue(lacking <= 1, laid.what());
      alone += lacking;
    }
    assertTrue(alone > Laid.share(20), "too few alone: " + alone);
  }

  private static List<PlacedStrip> paired(Laid laid) {
    return laid.layout().strips().stream().filter(PlacedStrip::paired).toList();
  }

  @Test
  void theSampleHasDiscsInALine() {
    long lined = sample.stream().filter(laid -> laid.lineDiscs() > 0).count();
    assertTrue(lined >= Laid.share(20), () -> "lines of discs: " + lined);
  }

  /**
   * 1 or −1; a mirror image has the other sign, a turned copy the same. Going round anticlockwise,
   * whether the turn from a long side, which lies at 45°, into an end, which does not, is blunt.
   */
  private static int slant(Polygon strip) {
    Coordinate[] corners = strip.getCoordinates();
    if (!Orientation.isCCW(corners)) {
      corners = strip.reverse().getCoordinates();
    }
    for (int i = 0; i < 3; i++) {
      double dx = corners[i + 1].x - corners[i].x;
      double dy = corners[i + 1].y - corners[i].y;
      if (Math.abs(Math.abs(dx) - Math.abs(dy)) < CLOSE) {
        Coordinate next = corners[i + 2];
        double along = dx * (next.x - corners[i + 1].x) + dy * (next.y - corners[i + 1].y);
        return along > 0 ? 1 : -1;
      }
    }
    throw new AssertionError("no side at 45°: " + strip);
  }

  @Test
  void cutStripsAreAsManyAndAsLongAsThePlanStates() {
    for (Laid laid : ofOneJoinedStrip()) {
      CutTotals cut = laid.cut();
      double gain = laid.plan().sizes().joinGain();
      List<PlacedStrip> strips = cutStrips(laid);
      double run =
          strips.stream()
              .limit(cut.runCount())
              .mapToDouble(s -> s.length() * gain - cut.joinLoss())
              .sum();
      long paired = strips.stream().limit(cut.runCount()).filter(PlacedStrip::paired).count();
      run -= paired % 2 * laid.plan().sizes().strip().stripCutWidth() * gain;
      assertEquals(cut.stripCount(), strips.size(), laid.what());
      assertEquals(cut.fullCount(), strips.stream().filter(PlacedStrip::full).count(), laid.what());
      assertEquals(cut.joinedLength() - cut.joinLoss(), run, 1e-9 * run, laid.what());
    }
  }

  @Test
  void theJoinedRunIsLongEnough() {
    for (Laid laid : ofOneJoinedStrip()) {
      double need = laid.plan().rows().orElseThrow().strip().orderFlatLength();
      assertTrue(laid.cut().joinedLength() >= need - CLOSE, laid.what());
    }
  }

  private List<Laid> ofOneJoinedStrip() {
    return sample.stream().filter(laid -> !laid.brief().ownStrips()).toList();
  }

  private List<Laid> ofOwnStrips() {
    List<Laid> own = sample.stream().filter(laid -> laid.brief().ownStrips()).toList();
    assertTrue(own.size() >= Laid.share(100), () -> "orders by cushion: " + own.size());
    return own;
  }

  private static List<PlacedStrip> cutStrips(Laid laid) {
    return laid.layout().strips().stream().filter(PlacedStrip::cut).toList();
  }

  /** Full strips for all but the last of each; then a last one each, shorter or off a full one. */
  @Test
  void theStripsThatAreCutAreEnoughForEveryCushion() {
    for (Laid laid : ofOwnStrips()) {
      CutTotals cut = laid.cut();
      int cushions = laid.brief().cushion().quantity();
      List<PlacedStrip> full = cutStrips(laid).stream().filter(PlacedStrip::full).toList();
      List<PlacedStrip> shorter = cutStrips(laid).stream().filter(s -> !s.full()).toList();
      long whole = (long) cushions * (cut.stripsEach() - 1) + laid.brief().fabric().spareStrips();
      long lasts =
          shorter.stream().filter(s -> s.length() >= cut.lastStripLength() - CLOSE).count()
              + full.stream().skip(whole).mapToLong(s -> lastsIn(s, cut)).sum();
      assertEquals(cut.fullCount(), full.size(), laid.what());
      assertEquals(cut.oddCount(), shorter.size(), laid.what());
      assertTrue(lasts >= cushions, () -> laid.what() + ": last strips: " + lasts);
    }
  }

  private static long lastsIn(PlacedStrip full, CutTotals cut) {
    return (long) Math.floor((full.length() + CLOSE) / cut.lastStripLength());
  }

  /** One less would leave a cushion without its last strip. */
  @Test
  void noFullStripIsCutForNothing() {
    for (Laid laid : ofOwnStrips()) {
      CutTotals cut = laid.cut();
      int cushions = laid.brief().cushion().quantity();
      PlacedStrip full = laid.layout().strips().get(0);
      long given = cut.oddCount() + (cut.lastFromFull() - 1) * lastsIn(full, cut);
      assertTrue(cut.lastFromFull() == 0 || given < cushions, laid.what());
    }
  }

  @Test
  void theJoinedStripOfEveryCushionIsLongEnough() {
    for (Laid laid : ofOwnStrips()) {
      CutTotals cut = laid.cut();
      double gain = laid.plan().sizes().joinGain();
      double full = laid.layout().strips().get(0).length();
      double joined =
          (cut.stripsEach() - 1) * (full * gain - cut.joinLoss()) + cut.lastStripLength() * gain;
      double need = laid.plan().rows().orElseThrow().strip().flatLength();
      assertTrue(joined >= need - CLOSE, laid.what());
      assertEquals(joined, cut.joinedLength(), 1e-9 * joined, laid.what());
      assertEquals(joined - need, cut.joinedSlack(), 1e-9 * joined, laid.what());
    }
  }

  /**
   * On the frill fabric where it is as wide as one, or else among the bases and the round backs.
   */
  @Test
  void everyMatchingDiscOfTheOrderIsPlaced() {
    int elsewhere = 0;
    for (Laid laid : sample) {
      var base = laid.brief().base();
      int cushions = laid.brief().cushion().quantity();
      int matching = cushions * (base.matchingDiscs() + base.backMatchingDiscs());
      boolean fits = laid.plan().sizes().discs().baseCutDiameter() <= laid.layout().width() + CLOSE;
      assertEquals(fits ? matching : 0, laid.layout().discs().size(), laid.what());
      assertEquals(cushions + (fits ? 0 : matching), laid.bases(), laid.what());
      elsewhere += fits ? 0 : matching;
    }
    assertTrue(elsewhere >= Laid.share(20), "too few are cut elsewhere: " + elsewhere);
  }

  @Test
  void thePiecesCoverNoMoreThanTheFabric() {
    for (Laid laid : sample) {
      double fabric = laid.layout().length() * laid.layout().width();
      double pieces = laid.polygons().stream().mapToDouble(Polygon::getArea).sum();
      assertTrue(pieces <= fabric + CLOSE, laid.what());
    }
  }

  /** More discs than lie side by side may be few enough for one line only if the line is long. */
  @Test
  void threeDiscsThatDoNotFitSideBySideMakeTwoLines() {
    Brief brief =
        Briefs.inch()
            .with("diameter", 36)
            .with("fabric_width", 108)
            .with("base_fabric_width", 60)
            .with("matching_discs", 3)
            .with("ring_spacing", 3)
            .with("interfaced", "none")
            .brief();
    CutLayout layout = CutLayout.of(brief, Grain.CROSSWISE).orElseThrow();
    var lines = layout.discs().stream().map(disc -> disc.centre().x()).distinct().toList();
    assertEquals(2, lines.size(), lines::toString);
    double apart = lines.get(1) - lines.get(0);
    assertEquals(layout.discs().get(0).diameter(), apart, CLOSE);
  }

  /**
   * By hand: strips 2 1/4 wide across 53 in of fabric; the matching disc of 19 7/8 touches the last
   * full strip and the edge.
   */
  @Test
  void theDiscTouchesTheLastFullStripAndTheEdge() {
    CutLayout layout = CutLayout.of(Briefs.inch().brief(), Grain.CROSSWISE).orElseThrow();
    long full = layout.strips().stream().filter(PlacedStrip::full).count();
    assertEquals(
        List.of(new Point(0, 0), new Point(0, 53), new Point(2.25, 53), new Point(2.25, 0)),
        layout.strips().get(0).corners());
    assertEquals(
        List.of(new PlacedDisc(new Point(full * 2.25 + 9.9375, 9.9375), 19.875)), layout.discs());
  }

  @Test
  void fabricTooNarrowForTheGrainHasNoLayout() {
    Brief brief = Briefs.inch().with("fabric_width", 10).brief();
    assertTrue(CutLayout.of(brief, Grain.CROSSWISE).isEmpty());
  }
}
