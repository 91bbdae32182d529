package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.brief.Grain;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Orders at random where every cushion has its own joined strip, counted over from the pieces. */
class OwnStripsPlanTest {
  private static final double HAIR = 1e-6;

  /** One of them, with its plan. */
  private record Order(Briefs briefs, Plan plan) {
    int cushions() {
      return ((Number) briefs.inputs().get("quantity")).intValue();
    }

    int spares() {
      return ((Number) briefs.inputs().get("spare_strips")).intValue();
    }

    ChosenGrain work() {
      return plan.cutting().flatMap(GrainsCompared::cut).orElseThrow();
    }

    CutTotals total() {
      return work().total();
    }

    double need() {
      return plan.rows().orElseThrow().strip().flatLength();
    }

    List<Double> shorter() {
      return work().cutList().stream()
          .filter(piece -> piece.cutPiece() == Piece.SHORTER_STRIP)
          .map(piece -> piece.size().orElseThrow().cutLength())
          .toList();
    }

    /** What joined strips lengthen by on the bias. */
    double gain(Grain grain) {
      double stretch = ((Number) briefs.inputs().get("bias_stretch")).doubleValue();
      return grain == Grain.BIAS ? 1 + stretch : 1;
    }
  }

  private static final Map<Grain, List<Order>> ORDERS = new EnumMap<>(Grain.class);

  private static List<Order> orders(Grain grain) {
    return ORDERS.computeIfAbsent(grain, OwnStripsPlanTest::planned);
  }

  private static List<Order> planned(Grain grain) {
    List<Order> orders =
        SampleBriefs.of(300, 20250112).stream()
            .map(briefs -> briefs.with(grain).with("joined_by", "cushion"))
            .map(briefs -> new Order(briefs, Plan.of(briefs.brief())))
            .filter(order -> order.cushions() > 1)
            .filter(order -> order.plan().cutting().flatMap(GrainsCompared::cut).isPresent())
            .toList();
    assertTrue(orders.size() > 80, () -> "too few plans: " + orders.size());
    return orders;
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void everyCushionHasAJoinLessThanStrips(Grain grain) {
    for (Order order : orders(grain)) {
      CutTotals total = order.total();
      assertEquals(
          order.cushions() * (total.stripsEach() - 1), total.joinCount(), order.briefs()::toString);
      assertEquals(
          order.cushions() * total.stripsEach(), total.runCount(), order.briefs()::toString);
    }
  }

  /** Added up strip by strip: every one but the last as long as a full one. */
  @ParameterizedTest
  @EnumSource(Grain.class)
  void everyCushionsStripIsAsLongAsItsNeedAndTheRestIsSaid(Grain grain) {
    for (Order order : orders(grain)) {
      CutTotals total = order.total();
      double cut = (total.stripsEach() - 1) * total.stripLength() + total.lastStripLength();
      double joined = cut * order.gain(grain) - (total.stripsEach() - 1) * total.joinLoss();
      assertEquals(joined, total.joinedLength(), HAIR, order.briefs()::toString);
      assertEquals(joined - order.need(), total.joinedSlack(), HAIR, order.briefs()::toString);
      assertTrue(joined >= order.need() - HAIR, order.briefs()::toString);
    }
  }

  /** A last strip that could be shorter by a step of the rule would be too short or useless. */
  @ParameterizedTest
  @EnumSource(
      value = Grain.class,
      names = {"CROSSWISE", "BIAS"})
  void theLastStripIsNoLongerThanItMust(Grain grain) {
    for (Order order : orders(grain)) {
      CutTotals total = order.total();
      double step = ((Number) order.briefs().inputs().get("marking_step")).doubleValue();
      double shortest = ((Number) order.briefs().inputs().get("shortest_piece")).doubleValue();
      double least = Math.max(shortest, 2 * total.joinLoss());
      boolean tooShort = total.joinedSlack() - step * order.gain(grain) < HAIR;
      boolean useless = total.lastStripLength() <= least + HAIR;
      assertTrue(tooShort || useless, order.briefs()::toString);
    }
  }

  /** Full strips that are left whole, those cut up for last ones, and shorter ones that serve. */
  @ParameterizedTest
  @EnumSource(Grain.class)
  void whatIsCutIsEnoughForEveryCushion(Grain grain) {
    for (Order order : orders(grain)) {
      CutTotals total = order.total();
      int inFull = (int) Math.floor(total.stripLength() / total.lastStripLength() + HAIR);
      int whole = total.fullCount() - order.spares() - total.lastFromFull();
      int lasts = order.shorter().size() + total.lastFromFull() * inFull;
      assertEquals(order.cushions() * (total.stripsEach() - 1), whole, order.briefs()::toString);
      assertTrue(lasts >= order.cushions(), order.briefs()::toString);
    }
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void everyShorterStripThatIsCutIsAsLongAsALastOne(Grain grain) {
    for (Order order : orders(grain)) {
      double last = order.total().lastStripLength();
      assertTrue(
          order.shorter().stream().allMatch(strip -> strip >= last - HAIR),
          order.briefs()::toString);
    }
  }

  /** Both ways of coming by a last strip are among those looked at. */
  @ParameterizedTest
  @EnumSource(
      value = Grain.class,
      names = {"CROSSWISE", "BIAS"})
  void lastStripsComeFromFullOnesAndFromShorterOnes(Grain grain) {
    List<Order> orders = orders(grain);
    assertTrue(orders.stream().anyMatch(order -> order.total().lastFromFull() > 0));
    assertTrue(orders.stream().anyMatch(order -> !order.shorter().isEmpty()));
  }
}
