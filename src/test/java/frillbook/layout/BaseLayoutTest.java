package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.SharedSample;
import frillbook.brief.BackStyle;
import frillbook.brief.Brief;
import frillbook.discs.BaseFabric;
import frillbook.discs.DiscSizes;
import frillbook.measure.LengthUnit;
import frillbook.plan.Plan;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Bases and backs in their places against JTS, over briefs drawn at random. */
class BaseLayoutTest {
  private record Laid(Brief brief, Plan plan, BaseLayout layout, String what) {
    BaseFabric fabric() {
      return plan.base().base();
    }

    boolean inZigzag() {
      return fabric().baseInZigzag();
    }

    int quantity() {
      return brief.cushion().quantity();
    }

    /** Discs that are cut as large as a base. */
    int bases() {
      return quantity() + plan.sizes().discs().baseMatchingCount();
    }

    double disc() {
      return layout.discs().get(0).diameter();
    }

    List<Polygon> polygons() {
      return Stream.concat(
              layout.discs().stream().map(OnFabric::polygon),
              layout.backs().stream().map(OnFabric::polygon))
          .toList();
    }
  }

  private static final int BRIEFS = SampleBriefs.layouts(400);

  private static final SharedSample<List<Laid>> SHARED = new SharedSample<>(BaseLayoutTest::layOut);

  private List<Laid> laid;

  @BeforeEach
  void layOutTheSample() {
    laid = SHARED.get();
    if (!SampleBriefs.areScaled()) {
      assertEveryWayComesUp();
    }
  }

  private void assertEveryWayComesUp() {
    assertSome(one -> one.inZigzag() && one.fabric().basePerRow() == 1);
    assertSome(one -> one.inZigzag() && one.fabric().basePerRow() > 1);
    assertSome(one -> one.inZigzag() && !one.layout().backs().isEmpty());
    assertSome(one -> !one.inZigzag() && one.fabric().backs().beside() > 0);
    assertSome(one -> one.plan().sizes().baseWidth().baseWidths() > 1);
  }

  private void assertSome(Predicate<Laid> which) {
    assertTrue(laid.stream().anyMatch(which), "a way of laying out did not come up");
  }

  /** Each brief with its own few cushions, and with enough and discs enough for many lines. */
  private static List<Laid> layOut() {
    return SampleBriefs.of(BRIEFS, 20250102).stream()
        .flatMap(briefs -> Stream.of(briefs, many(briefs)))
        .map(BaseLayoutTest::laid)
        .toList();
  }

  private static Briefs many(Briefs briefs) {
    return briefs.with("quantity", 7).with("matching_disc_fabric", "base");
  }

  private static Laid laid(Briefs briefs) {
    Brief brief = briefs.brief();
    return new Laid(brief, Plan.of(brief), BaseLayout.of(brief), briefs.inputs().toString());
  }

  @Test
  void everyPieceLiesOnTheFabric() {
    for (Laid one : laid) {
      OnFabric.assertInside(
          one.layout().length(), one.layout().width(), one.polygons(), one.what());
    }
  }

  @Test
  void noTwoPiecesOverlap() {
    int compared = 0;
    for (Laid one : laid) {
      compared += OnFabric.assertApart(one.polygons(), 0, one.what());
    }
    assertTrue(compared > BRIEFS * 5 / 2, "too few neighbours compared: " + compared);
  }

  /** Each line of a zigzag touches the line before it or that before, to a mark of the tape. */
  @Test
  void linesInZigzagCannotBePushedTogether() {
    int compared = 0;
    for (Laid one : laid.stream().filter(Laid::inZigzag).toList()) {
      List<Point> centres = one.layout().discs().stream().map(PlacedDisc::centre).toList();
      int perLine = one.fabric().basePerRow();
      // The last line may lie past the one before it and touch the one before that alone.
      for (int first = 0; first + 2 * perLine < centres.size(); first += perLine, compared++) {
        List<Point> later = centres.subList(first + perLine, centres.size());
        double nearest =
            centres.subList(first, first + perLine).stream()
                .flatMapToDouble(from -> later.stream().mapToDouble(to -> distance(from, to)))
                .min()
                .orElseThrow();
        double mark = one.brief().unit() == LengthUnit.CM ? .1 : 1 / 16.0;
        assertTrue(nearest - one.disc() < 2 * mark, one.what());
      }
    }
    assertTrue(compared > BRIEFS / 2, "too few lines compared: " + compared);
  }

  private static double distance(Point one, Point other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }

  /** What a square grid of bases, and of backs in discs as large, would take. */
  @Test
  void noFabricIsLongerThanASquareGridOfEverything() {
    for (Laid one : laid) {
      int perLine = (int) Math.floor(one.layout().width() / one.disc() + 1e-6);
      int quantity = one.quantity();
      boolean whole = one.brief().base().backStyle() == BackStyle.ONE_DISC;
      double discs = one.bases() + (whole ? quantity : 0);
      double grid = Math.ceil(discs / perLine) * one.disc();
      DiscSizes sizes = one.plan().sizes().discs();
      int backsPerLine = (int) Math.floor(one.layout().width() / sizes.backCutDiameter() + 1e-6);
      double halves =
          whole ? 0 : Math.ceil(2.0 * quantity / backsPerLine) * sizes.backPieceHeight();
      assertTrue(one.layout().length() <= grid + halves + OnFabric.TOLERANCE, one.what());
    }
  }

  @Test
  void everyCushionHasItsBaseAndItsBack() {
    for (Laid one : laid) {
      boolean whole = one.brief().base().backStyle() == BackStyle.ONE_DISC;
      int backs = (whole ? 1 : 2) * one.quantity();
      int discs = one.bases() + (one.inZigzag() && whole ? backs : 0);
      assertEquals(discs, one.layout().discs().size(), one.what());
      assertEquals(one.bases() + backs, one.polygons().size(), one.what());
    }
  }

  @Test
  void theBoughtLengthHoldsTheRows() {
    for (Laid one : laid) {
      double bought = one.plan().base().base().baseBuyLength();
      double left = bought * (1 - one.brief().fabric().washShrinkLength());
      double taken = one.layout().length() * one.plan().sizes().baseWidth().baseWidths();
      assertTrue(left >= taken - OnFabric.TOLERANCE, one.what());
    }
  }

  /** By hand: the base of 19 7/8 in lies in the corner, the back of 19 in beside it. */
  @Test
  void aSingleBackLiesBesideItsBase() {
    BaseLayout layout = BaseLayout.of(Briefs.inch().brief());
    assertEquals(
        new BaseLayout(
            19.875,
            43,
            List.of(new PlacedDisc(new Point(9.9375, 9.9375), 19.875)),
            List.of(new PlacedRectangle(new Point(0, 19.875), 19, 19))),
        layout);
  }
}
