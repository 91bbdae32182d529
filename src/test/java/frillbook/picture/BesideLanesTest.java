package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.brief.Grain;
import frillbook.offcut.Tables;
import frillbook.picture.BesideStrips.BesideStrip;
import frillbook.picture.BesideStrips.Deeps;
import frillbook.picture.BesideStrips.Runs;
import frillbook.straight.DiscLanes;
import frillbook.straight.StraightPlan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Fifteen lanes 2 wide beside discs, behind three full strips, across fabric 50 wide; by hand.
 *
 * <p>They offer 34, 30, 32, 30, 30, then 20 but for the fourteenth, 33. Strips of 34, 33, 32, 30
 * and 30 are cut, so two of the three that are 30 long.
 */
class BesideLanesTest {
  private static final double[] LANES = {
    34, 30, 32, 30, 30, 20, 20, 20, 20, 20, 20, 20, 20, 33, 20
  };

  private static final double[] CUT = {34, 33, 32, 30, 30};

  private static CutFabric fabric(Grain grain, int full, double[] odd, Map<String, Object> more) {
    Map<String, Object> values = new HashMap<>(more);
    values.putIfAbsent("laneCount", 15);
    values.put("length", Tables.length(50));
    values.put("cut", Tables.cut(full, odd.length));
    values.put("full", 3);
    values.put("perLane", 1);
    values.put("stripLength", 12.0);
    StraightPlan plan = Filled.of(StraightPlan.class, values);
    Map<String, Object> layouts =
        Map.of(
            "lanes",
            Tables.lanes(LANES),
            "odds",
            Tables.odds(odd),
            "discLanes",
            Filled.of(DiscLanes.class, Map.of("lanesAtDisc", 5)));
    return new CutFabric(Briefs.inch().brief(), Tables.laid(grain, 50, 2, plan, layouts, 0));
  }

  private static BesideStrips strips(CutFabric fabric, boolean far, int ties) {
    return BesideCorner.of(fabric, FabricSide.all(fabric), far).strips(ties);
  }

  private static void assertLane(
      int lane, double offered, int ties, double piece, double depth, BesideStrip strip) {
    assertEquals(lane, strip.besideLane());
    assertEquals(offered, strip.besideOffered());
    assertEquals(ties, strip.besideTies());
    assertEquals(piece, strip.besidePiece());
    assertEquals(depth, strip.besideDepth());
    assertEquals(50 - piece, strip.besideStart());
    assertEquals(0, strip.besideFirst());
    double start = 50 - piece;
    assertEquals(new Runs(50, start, start, 50), strip.runs());
    assertEquals(new Deeps(depth, depth + 2), strip.deeps());
  }

  @Test
  void thirteenLanesAreNear() {
    BesideStrips near = strips(fabric(Grain.CROSSWISE, 3, CUT, Map.of()), false, 0);
    assertEquals(13, near.besideStrips());
    assertEquals(6, near.besideFrom());
    assertEquals(0, near.besideSkip());
    List<BesideStrip> rows = near.besideRows();
    assertLane(0, 34, 0, 34, 6, rows.get(0));
    assertLane(1, 30, 1, 30, 8, rows.get(1));
    assertLane(2, 32, 1, 32, 10, rows.get(2));
    assertLane(3, 30, 2, 30, 12, rows.get(3));
    assertLane(4, 30, 3, 0, 14, rows.get(4));
    assertLane(5, 20, 3, 0, 16, rows.get(5));
    assertTrue(rows.get(3).besideCut());
    assertFalse(rows.get(4).besideCut());
    assertEquals(4, near.cut());
    assertEquals(3, near.ties());
  }

  @Test
  void theOthersAreFar() {
    BesideStrips far = strips(fabric(Grain.CROSSWISE, 3, CUT, Map.of()), true, 3);
    assertEquals(2, far.besideStrips());
    assertLane(13, 33, 3, 33, 32, far.besideRows().get(0));
    assertLane(14, 20, 3, 0, 34, far.besideRows().get(1));
    assertLane(14, 20, 3, 0, 34, far.besideRows().get(12));
    assertEquals(1, far.cut());
  }

  @Test
  void withFewLanesNoneIsFar() {
    CutFabric few = fabric(Grain.CROSSWISE, 3, CUT, Map.of("laneCount", 5));
    assertEquals(5, strips(few, false, 0).besideStrips());
    BesideStrips far = strips(few, true, 2);
    assertEquals(0, far.besideStrips());
    BesideStrip none = far.besideRows().get(0);
    assertEquals(2, none.besideTies());
    assertEquals(0, none.besideDepth());
    assertEquals(new Deeps(0, 0), none.deeps());
  }

  /** Four lanes touch the near disc; the far one begins after the five that touch the other. */
  @Test
  void inZigzagEitherDiscHasItsLanes() {
    CutFabric zigzag =
        fabric(Grain.LENGTHWISE, 3, CUT, Map.of("isZigzag", true, "whole", 4, "laneCount", 9));
    assertEquals(4, strips(zigzag, false, 0).besideStrips());
    BesideStrips far = strips(zigzag, true, 0);
    assertEquals(4, far.besideStrips());
    assertEquals(5, far.besideRows().get(0).besideLane());
    CutFabric more =
        fabric(Grain.LENGTHWISE, 3, CUT, Map.of("isZigzag", true, "whole", 7, "laneCount", 9));
    assertEquals(7, strips(more, true, 0).besideRows().get(0).besideLane());
  }

  /** Two strips of 12 in each of the last two lanes: 24 and what is cut of them besides. */
  @Test
  void fullStripsBesideDiscsLengthenTheLane() {
    CutFabric beside =
        fabric(
            Grain.CROSSWISE,
            9,
            CUT,
            Map.of("laneCount", 5, "whole", 3, "moreWhole", 0, "moreLast", 2));
    List<BesideStrip> rows = strips(beside, false, 0).besideRows();
    assertEquals(34, rows.get(0).besidePiece());
    assertEquals(30 + 24, rows.get(3).besidePiece());
    assertEquals(24, rows.get(4).besidePiece());
    assertEquals(26, rows.get(4).besideStart());
  }
}
