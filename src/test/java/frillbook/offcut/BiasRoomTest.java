package frillbook.offcut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Filled;
import frillbook.bias.BiasPlan;
import frillbook.bias.CornerStrips;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.straight.StraightPlan;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Bias strips on fabric 50 wide, cut lines 3 apart along the edge, three discs of 10 in a band;
 * worked by hand.
 *
 * <p>In the near corner the strips begin at 20: two of 30 and 25 and one of 26 that has a partner;
 * in the far corner at 18: 28 and 22, and the partner of 27.
 */
class BiasRoomTest {
  private static final List<CornerStrips> CORNERS =
      List.of(
          Filled.of(CornerStrips.class, Map.of("nearLane", 30.0, "farLane", 28.0)),
          Filled.of(CornerStrips.class, Map.of("nearLane", 25.0, "farLane", 22.0)),
          Filled.of(CornerStrips.class, Map.of("nearPair", 26.0, "farPair", 27.0)));

  private static BiasPlan plan(int cornerDiscs, int lineDiscs, int laneCount, double shorter) {
    return Filled.of(
        BiasPlan.class,
        Map.ofEntries(
            Map.entry("length", Tables.length(80)),
            Map.entry("cushion", CushionStrips.alike(1, 1)),
            Map.entry("cut", Tables.cut(4, 2)),
            Map.entry("stripLength", 40.0),
            Map.entry("cornerDiscs", cornerDiscs),
            Map.entry("lineDiscs", lineDiscs),
            Map.entry("bandLength", 30.0),
            Map.entry("shorter", shorter),
            Map.entry("near", 20.0),
            Map.entry("far", 18.0),
            Map.entry("nearShort", 4),
            Map.entry("farShort", 5),
            Map.entry("laneCount", laneCount),
            Map.entry("full", 6)));
  }

  /** Strips of 30 and 26 are the two shorter ones that are cut. */
  static OnTable table(int discs, int cornerDiscs, int laneCount) {
    return Tables.bias(discs, plan(cornerDiscs, 0, laneCount, 45), CORNERS, 30, 26, 25);
  }

  /**
   * Two strips of the near corner may be cut, so two of its four are not: 20 + 2 × 3. Two of the
   * five of the far one, so 18 + 3 × 3.
   */
  @Test
  void stripsThatAreNotCutMakeTheCornerLarger() {
    BiasRoom room = BiasRoom.of(table(0, 0, 10));
    assertEquals(new BiasRoom(26, 2, 27, 0, 0), room);
  }

  /** Only two of the far corner's strips lie beside the four of the near one. */
  @Test
  void noMoreStripsAreOfferedThanTheFabricHolds() {
    assertEquals(18, BiasRoom.of(table(0, 0, 6)).farLeg());
  }

  /** Shorter strips of 29 or more: none in the far corner, and of six full ones two are not cut. */
  @Test
  void whereNoneOfTheCornerIsCutFullStripsMayBeLeftBeforeIt() {
    OnTable table = Tables.bias(0, plan(0, 0, 10, 45), CORNERS, 30, 29);
    assertEquals(new BiasRoom(20 + 3 * 3, 0, 18 + (5 + 2) * 3, 0, 0), BiasRoom.of(table));
  }

  @Test
  void aDiscInACornerLeavesNoTriangle() {
    assertEquals(new BiasRoom(0, 2, 27, 0, 0), BiasRoom.of(table(1, 1, 10)));
    assertEquals(new BiasRoom(0, 2, 0, 0, 0), BiasRoom.of(table(2, 2, 10)));
  }

  /**
   * Seven in threes leave one for the last line; of nine, two in corners and one in a line, six.
   */
  @Test
  void theLastLineOfABandHoldsWhatTheOthersLeave() {
    assertEquals(7, BiasRoom.of(table(7, 0, 10)).bandDiscs());
    assertEquals(1, BiasRoom.of(table(7, 0, 10)).bandLast());
    OnTable nine = Tables.bias(9, plan(2, 1, 10, 45), CORNERS, 30, 26);
    assertEquals(6, BiasRoom.of(nine).bandDiscs());
    assertEquals(3, BiasRoom.of(nine).bandLast());
  }

  private static void assertLeft(OnTable table, Leftover... left) {
    assertEquals(List.of(left), BiasRoom.of(table).leftovers(table));
  }

  /** A square of half the leg; beside the last disc 40 of 50, beside a full line 20. */
  @Test
  void cornersLeaveSquaresAndBandsWhatIsBesideThem() {
    assertLeft(
        table(7, 0, 10),
        Leftover.of(Place.NEAR_CORNER, 13, 13),
        Leftover.of(Place.FAR_CORNER, 13.5, 13.5),
        Leftover.of(Place.LAST_BAND, 10, 40),
        Leftover.of(Place.BANDS, 30, 20));
  }

  /** Fabric 8 long cuts off a corner of legs of 26 and 27: across it, 18 and 19 lie whole. */
  @Test
  void onShortFabricACornerLeavesItsWholeLength() {
    assertLeft(
        Tables.bias(0, plan(0, 0, 10, 8), CORNERS, 30, 26),
        Leftover.of(Place.NEAR_CORNER, 8, 26 - 8),
        Leftover.of(Place.FAR_CORNER, 8, 27 - 8),
        Leftover.of(Place.LAST_BAND, 0, 50),
        Leftover.of(Place.BANDS, 30, 20));
  }

  @Test
  void onStraightGrainThereAreNoCorners() {
    StraightPlan plan =
        Filled.of(StraightPlan.class, Map.of("length", Tables.length(60), "cut", Tables.cut(1, 0)));
    OnTable table = Tables.straight(Grain.CROSSWISE, 50, 0, plan, List.of());
    assertEquals(new BiasRoom(0, 0, 0, 0, 0), BiasRoom.of(table));
  }
}
