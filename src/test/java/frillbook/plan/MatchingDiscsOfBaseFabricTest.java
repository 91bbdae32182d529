package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import frillbook.materials.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Six cushions of 18 in, whose bases and matching discs are 19 7/8 in and backs 19 in across, on
 * base fabric of 37 in less two selvages of 1/2 in.
 */
class MatchingDiscsOfBaseFabricTest {
  private static final Briefs SIX = Briefs.inch().with("quantity", 6).with("base_fabric_width", 37);

  private static final Briefs OF_BASE_FABRIC = SIX.with("matching_disc_fabric", "base");

  /** The frill fabric is cut as if the cushions had none. */
  @ParameterizedTest
  @EnumSource
  void theFrillFabricIsLeftToTheStrips(Grain grain) {
    ChosenGrain without = WorkedOrders.work(SIX.with("matching_discs", 0).with(grain));
    ChosenGrain work = WorkedOrders.work(OF_BASE_FABRIC.with(grain));
    assertEquals(without.total(), work.total());
    assertEquals(without.cutList(), work.cutList());
    assertEquals(without.picture(), work.picture());
    assertTrue(work.total().buyLength() < WorkedOrders.work(SIX.with(grain)).total().buyLength());
  }

  /**
   * One to a line, 16 1/8 in across and √(19.875² − 16.125²) = √135 = 11.619 in along from each to
   * the next, 11 5/8 on a tape: eighteen discs take 19.875 + 17 × 11.625 = 217.5 in, 49 steps of 4
   * 1/2 in and 220 1/2 in. That is 6.0417 yd used and 6.125 yd bought.
   */
  @Test
  void matchingDiscsLieAmongBasesAndBacks() {
    Material fabric = WorkedOrders.material(WorkedOrders.work(OF_BASE_FABRIC), "base_fabric");
    assertEquals(217.5 / 36, fabric.materialNeeded(), 1e-9);
    assertEquals(6.125, fabric.materialBought(), 1e-9);
  }

  /** Six bases, six backs, six matching discs and six of interfacing. */
  @ParameterizedTest
  @EnumSource
  void theyAreCutAllTheSame(Grain grain) {
    ChosenGrain work = WorkedOrders.work(OF_BASE_FABRIC.with(grain));
    assertEquals(24, WorkedOrders.task(work, "cut_discs").taskAmount());
  }

  /** 17 in usable hold no disc of 19 7/8 in, but strips: as if the base fabric had been chosen. */
  @Test
  void aNarrowFrillFabricLeavesThemToTheBaseFabric() {
    ChosenGrain work = WorkedOrders.work(SIX.with("fabric_width", 18));
    ChosenGrain chosen = WorkedOrders.work(OF_BASE_FABRIC.with("fabric_width", 18));
    assertEquals(chosen.total(), work.total());
    assertEquals(chosen.costing().bill().costs(), work.costing().bill().costs());
    assertTrue(Plan.of(OF_BASE_FABRIC.with("fabric_width", 18).brief()).checks().discFitsFabric());
  }
}
