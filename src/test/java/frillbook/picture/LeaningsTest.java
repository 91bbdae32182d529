package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.plan.Bill;
import frillbook.plan.Plan;
import org.junit.jupiter.api.Test;

class LeaningsTest {
  private static Drawn drawn(Briefs briefs) {
    return Drawn.of(briefs).orElseThrow();
  }

  /** Without matching discs the area rule says: fabric grows as fullness over ring spacing. */
  @Test
  void fabricGrowsWithFullnessOverSpacing() {
    Leanings leanings =
        drawn(Briefs.inch().with("matching_discs", 0).with("end_allowance", 0)).leanings();
    for (var point : leanings.fullers()) {
      assertEquals(point.fullerFullness() / 2.5, point.fullerFabric(), 1e-12);
    }
    for (var point : leanings.closers()) {
      assertEquals(.75 / point.closerSpacing(), point.closerFabric(), 1e-12);
    }
  }

  @Test
  void theMiddleIsThePlanItself() {
    Leanings leanings = drawn(Briefs.inch()).leanings();
    LeaningPrices prices = drawn(Briefs.inch()).leaningPrices();
    assertEquals(2.5, leanings.fullers().get(3).fullerFullness());
    assertEquals(1, leanings.fullers().get(3).fullerFabric(), 1e-12);
    assertEquals(1, prices.fullers().get(3).fullerPrice(), 1e-12);
    assertEquals(.75, leanings.closers().get(3).closerSpacing());
    assertEquals(1, prices.closers().get(3).closerPrice(), 1e-12);
  }

  /** A plan made anew for the other fullness buys whole steps; within a tenth of it. */
  @Test
  void theEstimateComesNearAPlanMadeAnew() {
    Briefs briefs =
        Briefs.inch().with("quantity", 4).with("charge_as", "used").with("tidy_step", 0);
    Drawn planned = drawn(briefs);
    for (int i = 0; i < 7; i++) {
      double fullness = planned.leanings().fullers().get(i).fullerFullness();
      double fuller = price(drawn(briefs.with("fullness", fullness)).plan());
      double said = planned.leaningPrices().fullers().get(i).fullerPrice();
      assertEquals(fuller / price(planned.plan()), said, .1);
    }
    for (int i = 0; i < 7; i++) {
      double spacing = planned.leanings().closers().get(i).closerSpacing();
      double closer = price(drawn(briefs.with("ring_spacing", spacing)).plan());
      double said = planned.leaningPrices().closers().get(i).closerPrice();
      assertEquals(closer / price(planned.plan()), said, .1);
    }
  }

  private static double price(Plan plan) {
    Bill bill = plan.cutting().orElseThrow().cut().orElseThrow().costing().bill();
    return bill.asking().orElseThrow().price().priceTotal();
  }

  /** The parts are all of what the client pays, as long as there is no loss. */
  @Test
  void thePartsAddUpToThePrice() {
    for (Drawn one : Drawn.sample(SampleBriefs.layouts(30), 20250405)) {
      double sum = one.money().stream().mapToDouble(MoneyShare::moneyAmount).sum();
      assertEquals(price(one.plan()), sum, 1e-6 * sum, one.what());
    }
  }

  @Test
  void anUngatheredFrillHasNoLessFullness() {
    Leanings leanings = drawn(Briefs.inch().with("fullness", 1.1)).leanings();
    assertEquals(1, leanings.fullers().get(0).fullerFullness());
    assertTrue(leanings.fullers().get(0).fullerFabric() < 1);
  }
}
