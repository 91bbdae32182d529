package frillbook.offcut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Filled;
import frillbook.brief.Grain;
import frillbook.cutting.StripsCut;
import frillbook.straight.LaneRow;
import frillbook.straight.StraightPlan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Strips 2 wide and discs of 10, worked by hand.
 *
 * <p>With three discs two lie in the first line and one in the second, across fabric 50 wide: five
 * full strips before them take 10, the lines 20, of 31. Ten lanes beside them leave what {@link
 * #LANES} says; an eleventh would lie beyond the fabric.
 */
class StraightRoomTest {
  private static final List<LaneRow> LANES =
      Tables.lanes(31, 30.1, 30, 30.1, 31, 41, 40.1, 40, 40.1, 41, 10);

  private static StraightPlan plan(double usable, double strip, StripsCut cut, Object... more) {
    Map<String, Object> values = new HashMap<>();
    values.put("length", Tables.length(usable));
    values.put("stripLength", strip);
    values.put("cut", cut);
    values.put("perLane", 1);
    for (int i = 0; i < more.length; i += 2) {
      values.put((String) more[i], more[i + 1]);
    }
    return Filled.of(StraightPlan.class, values);
  }

  private static OnTable beside(int full, int odd, double... lengths) {
    StraightPlan plan =
        plan(31, 50, Tables.cut(full, odd), "perLine", 2, "lines", 2, "full", 5, "laneCount", 10);
    return Tables.straight(Grain.CROSSWISE, 50, 3, plan, LANES, lengths);
  }

  private static List<Integer> free(OnTable table) {
    return StraightRoom.of(table).freeLanes().stream().map(FreeLane::laneFree).toList();
  }

  private static void assertLeft(OnTable table, double... runsAndStacks) {
    List<Leftover> left = StraightRoom.of(table).leftovers(table);
    List<Place> places = List.of(Place.BEHIND, Place.BEYOND, Place.END, Place.BESIDE);
    assertEquals(places, left.stream().map(Leftover::leftoverPlace).toList());
    for (int i = 0; i < places.size(); i++) {
      assertEquals(runsAndStacks[2 * i], left.get(i).leftoverRun(), 1e-12, places.get(i) + "");
      assertEquals(
          runsAndStacks[2 * i + 1], left.get(i).leftoverStack(), 1e-12, places.get(i) + "");
    }
  }

  /** 30 strips lie in 60, 28 are cut. */
  @Test
  void withoutDiscsWhatIsBehindTheStripsIsLeft() {
    OnTable table =
        Tables.straight(
            Grain.CROSSWISE, 50, 0, plan(60, 50, Tables.cut(28, 0), "full", 30), List.of());
    StraightRoom room = StraightRoom.of(table);
    assertEquals(new StraightRoom(60, 1, 30, 0, 0, 60, List.of()), room);
    assertLeft(table, 50, 4, 50, 0, 0, 60, 50, 0);
  }

  /** 20 lanes of two strips of 45 in 100: 37 strips take 19 lanes, and each lane leaves 10. */
  @Test
  void lengthwiseStripsEndToEndLeaveTheEndOfTheirLanes() {
    OnTable table =
        Tables.straight(
            Grain.LENGTHWISE,
            40,
            0,
            plan(100, 45, Tables.cut(37, 0), "full", 20, "perLane", 2),
            List.of());
    assertEquals(40, StraightRoom.of(table).fabricStack());
    assertEquals(2, StraightRoom.of(table).laneStrips());
    assertLeft(table, 100, 2, 100, 0, 10, 40, 100, 0);
  }

  /** Two shorter strips of 41 are cut, from the sixth lane and from the tenth. */
  @Test
  void lanesAreFreeUpToTheNextThatIsCut() {
    OnTable table = beside(5, 2, 41, 41, 40.1);
    assertEquals(List.of(1, 2, 3, 4, 5, 0, 1, 2, 3, 0, 0), free(table));
    StraightRoom room = StraightRoom.of(table);
    assertEquals(new StraightRoom(31, 1, 5, 10, 20, 30, room.freeLanes()), room);
    assertLeft(table, 50, 0, 50, 1, 0, 10, 30, 10);
  }

  /** Of equally long ones it is not asked which; a hair is no difference. */
  @Test
  void everyLaneThatMayBeCutIsTaken() {
    assertEquals(List.of(1, 2, 3, 4, 5, 0, 0, 1, 0, 0, 0), free(beside(5, 3, 41, 41, 40.1)));
    assertEquals(
        List.of(1, 2, 3, 4, 5, 0, 1, 2, 3, 0, 0), free(beside(5, 2, 41.0000005, 41.0000005)));
  }

  /** Three of five full strips are cut: two lanes more are free, and all but 6 of the 31. */
  @Test
  void fullStripsThatAreNotCutLeaveTheirLanesToo() {
    OnTable table = beside(3, 0);
    assertEquals(List.of(3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 0), free(table));
    assertLeft(table, 50, 4, 50, 1, 0, 10, 30, 25);
  }

  /** Lengthwise the strips of the lanes are the others: 10 in the first, 31 in the last. */
  @Test
  void lengthwiseLanesAreLookedAtLengthwise() {
    StraightPlan plan =
        plan(50, 50, Tables.cut(5, 2), "perLine", 2, "lines", 2, "full", 5, "laneCount", 11);
    OnTable table = Tables.straight(Grain.LENGTHWISE, 32, 3, plan, LANES, 41, 41);
    assertEquals(List.of(1, 0, 1, 2, 3, 0, 1, 2, 3, 4, 5), free(table));
    assertEquals(32, StraightRoom.of(table).fabricStack());
    assertLeft(table, 50, 0, 50, 0, 0, 10, 30, 10);
  }

  /**
   * Of 40 nine lanes of two full strips take 18 and a line of discs 10; eleven lanes beside the
   * discs reach to 40, six to 30. Nineteen full strips are one more than lie before the discs.
   */
  @Test
  void whereFullStripsAreCutBesideTheDiscsNothingIsLeftThere() {
    OnTable more = ofNineLanes(19, 6);
    assertLeft(more, 100, 0, 100, 10, 10, 18, 90, 0);
    assertLeft(ofNineLanes(18, 6), 100, 0, 100, 12, 10, 18, 90, 22);
    assertLeft(ofNineLanes(16, 11), 100, 2, 100, 12, 10, 18, 90, 24);
    assertLeft(ofNineLanes(19, 11), 100, 0, 100, 0, 10, 18, 90, 0);
  }

  private static OnTable ofNineLanes(int full, int beside) {
    StraightPlan plan =
        plan(
            100,
            45,
            Tables.cut(full, 0),
            "perLane",
            2,
            "perLine",
            1,
            "lines",
            1,
            "full",
            9,
            "laneCount",
            beside);
    return Tables.straight(Grain.LENGTHWISE, 40, 1, plan, LANES);
  }

  /** One in each line, but both in the way; the far one lies at the very selvage. */
  @Test
  void twoDiscsInZigzagReachFromEndToEndAndToTheSelvage() {
    StraightPlan plan =
        plan(
            18,
            18,
            Tables.cut(5, 0),
            "perLine",
            1,
            "lines",
            2,
            "isZigzag",
            true,
            "full",
            5,
            "laneCount",
            10);
    StraightRoom room = StraightRoom.of(Tables.straight(Grain.LENGTHWISE, 40, 2, plan, LANES));
    assertEquals(20, room.discsReach());
    assertEquals(40, room.discsEnd());
  }

  @Test
  void onTheBiasThereAreNoLanes() {
    OnTable table = BiasRoomTest.table(0, 0, 10);
    assertEquals(
        new StraightRoom(0, 1, 0, 0, 0, 0, List.of(new FreeLane(0), new FreeLane(0))),
        StraightRoom.of(table));
  }
}
