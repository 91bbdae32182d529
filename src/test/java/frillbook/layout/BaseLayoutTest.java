package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.SharedSample;
import frillbook.brief.BackStyle;
import frillbook.brief.Brief;
import frillbook.plan.Plan;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Bases and backs in their places against JTS, over briefs drawn at random. */
class BaseLayoutTest {
  private record Laid(Brief brief, Plan plan, BaseLayout layout, String what) {
    List<Polygon> polygons() {
      return Stream.concat(
              layout.bases().stream().map(OnFabric::polygon),
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
    assertTrue(laid.size() >= BRIEFS * 3 / 8, () -> "too few plans: " + laid.size());
  }

  private static List<Laid> layOut() {
    return SampleBriefs.of(BRIEFS, 20250102).stream().flatMap(BaseLayoutTest::laid).toList();
  }

  private static Stream<Laid> laid(Briefs briefs) {
    Brief brief = briefs.brief();
    return BaseLayout.of(brief).stream()
        .map(layout -> new Laid(brief, Plan.of(brief), layout, briefs.inputs().toString()));
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

  @Test
  void everyCushionHasItsBaseAndItsBack() {
    for (Laid one : laid) {
      int quantity = one.brief().cushion().quantity();
      boolean whole = one.brief().base().backStyle() == BackStyle.ONE_DISC;
      assertEquals(quantity, one.layout().bases().size(), one.what());
      assertEquals(whole ? quantity : 2 * quantity, one.layout().backs().size(), one.what());
    }
  }

  @Test
  void theBoughtLengthHoldsTheRows() {
    for (Laid one : laid) {
      double bought = one.plan().base().orElseThrow().base().baseBuyLength();
      double left = bought * (1 - one.brief().fabric().washShrinkLength());
      assertTrue(left >= one.layout().length() - OnFabric.TOLERANCE, one.what());
    }
  }

  /** By hand: the base of 19 7/8 in lies in the corner, the back of 19 in beside it. */
  @Test
  void aSingleBackLiesBesideItsBase() {
    BaseLayout layout = BaseLayout.of(Briefs.inch().brief()).orElseThrow();
    assertEquals(
        new BaseLayout(
            19.875,
            43,
            List.of(new PlacedDisc(new Point(9.9375, 9.9375), 19.875)),
            List.of(new PlacedRectangle(new Point(0, 19.875), 19, 19))),
        layout);
  }
}
