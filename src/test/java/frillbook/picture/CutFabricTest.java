package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.bias.BiasPlan;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.offcut.Tables;
import frillbook.straight.StraightPlan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips 2 wide; worked by hand. */
class CutFabricTest {
  private static CutFabric straight(
      Grain grain, double length, int full, double[] odd, Map<String, Object> more) {
    Map<String, Object> values = new HashMap<>(more);
    values.put("length", Tables.length(length));
    values.put("cut", Tables.cut(full, odd.length));
    values.put("stripLength", 15.0);
    StraightPlan plan = Filled.of(StraightPlan.class, values);
    return new CutFabric(
        Briefs.inch().brief(), Tables.straight(grain, 40, 2, plan, Tables.lanes(14, 13, 12), odd));
  }

  private static CutFabric bias(Briefs briefs, double length, double band, double... odd) {
    BiasPlan plan =
        Filled.of(
            BiasPlan.class,
            Map.of(
                "length",
                Tables.length(length),
                "cut",
                Tables.cut(3, odd.length),
                "cushion",
                CushionStrips.alike(1, 1),
                "bandLength",
                band,
                "longer",
                70.0,
                "shorter",
                50.0,
                "full",
                5,
                "lineStrips",
                4));
    return new CutFabric(briefs.with(Grain.BIAS).brief(), Tables.bias(2, plan, List.of(), odd));
  }

  private static final double[] NONE = {};

  /** Ten lanes of twelve strips, four beside the first line of eleven, two beside the last. */
  private static final Map<String, Object> MANY =
      Map.of("perLane", 12, "full", 10, "laneCount", 6, "whole", 4, "moreWhole", 11, "moreLast", 3);

  /** As high as the fabric is wide, or half as high as it is long. */
  @Test
  void thePictureIsAtMostTwiceAsLongAsHigh() {
    CutFabric shorter = straight(Grain.CROSSWISE, 30, 3, NONE, Map.of("perLane", 1));
    assertEquals(40, shorter.scale());
    assertEquals(new Spot(.75, 1), shorter.farCorner());
    CutFabric longer = straight(Grain.CROSSWISE, 100, 3, NONE, Map.of("perLane", 1));
    assertEquals(50, longer.scale());
    assertEquals(new Spot(2, .8), longer.farCorner());
  }

  /** 50 of 70 are as long as wide; 49 are not. */
  @Test
  void stripsLieAlongOrAcross() {
    assertEquals(0, straight(Grain.LENGTHWISE, 30, 3, NONE, Map.of("perLane", 1)).turn());
    assertEquals(1, straight(Grain.CROSSWISE, 30, 3, NONE, Map.of("perLane", 1)).turn());
    assertEquals(0, bias(Briefs.inch(), 70, 20).turn());
    assertEquals(2, bias(Briefs.inch(), 70, 21).turn());
    assertEquals(30, straight(Grain.LENGTHWISE, 30, 3, NONE, Map.of("perLane", 1)).run());
    assertEquals(40, straight(Grain.CROSSWISE, 30, 3, NONE, Map.of("perLane", 1)).run());
  }

  /** By a strip's width, on the bias alone. */
  @Test
  void slantingEndsBeginFurtherOn() {
    assertEquals(2, bias(Briefs.inch(), 70, 20).shift());
    assertEquals(0, bias(Briefs.inch().with("join_line", "square"), 70, 20).shift());
    assertEquals(0, straight(Grain.CROSSWISE, 30, 3, NONE, Map.of("perLane", 1)).shift());
  }

  /** Strips of 14, 13, 12 and 12 are cut, the last two of several that are as long. */
  @Test
  void someAreSurelyCutAndSomeOfManyAlike() {
    CutFabric fabric =
        straight(Grain.CROSSWISE, 30, 3, new double[] {14, 13, 12, 12}, Map.of("perLane", 1));
    assertEquals(2, fabric.oddSure());
    assertEquals(2, fabric.oddTies());
    assertTrue(fabric.isLonger(12.1));
    assertFalse(fabric.isLonger(12.0000005));
    assertTrue(fabric.reaches(12));
    assertFalse(fabric.reaches(11.9));
    assertEquals(0, straight(Grain.CROSSWISE, 30, 3, NONE, Map.of("perLane", 1)).oddSure());
  }

  /** 120 strips fill the ten lanes; more are cut beside the discs. */
  @Test
  void lanesOfFullStripsAreCounted() {
    CutFabric beside = straight(Grain.LENGTHWISE, 30, 170, NONE, MANY);
    assertTrue(beside.cutsFullBeside());
    assertEquals(10, beside.fullLanes());
    assertEquals(6, beside.lanesOfFull());
    assertEquals(3, beside.lanes());
    CutFabric before = straight(Grain.LENGTHWISE, 30, 115, NONE, MANY);
    assertFalse(before.cutsFullBeside());
    assertEquals(10, before.fullLanes());
    assertEquals(0, before.lanesOfFull());
    assertEquals(0, before.lanes());
    CutFabric odd = straight(Grain.LENGTHWISE, 30, 115, new double[] {12}, MANY);
    assertEquals(3, odd.lanes());
  }

  /** Ten of twelve are drawn in a lane, ten of eleven, three: 100 + 40 + 6 of 170. */
  @Test
  void fullStripsThatAreNotDrawnAreTold() {
    assertEquals(24, straight(Grain.LENGTHWISE, 30, 170, NONE, MANY).fullLeft());
    assertEquals(15, straight(Grain.LENGTHWISE, 30, 115, NONE, MANY).fullLeft());
    assertEquals(0, straight(Grain.LENGTHWISE, 30, 8, NONE, MANY).fullLeft());
    assertEquals(0, straight(Grain.CROSSWISE, 30, 170, NONE, MANY).fullLeft());
  }

  /** The fourth lane is the last beside the first line. */
  @ParameterizedTest
  @CsvSource({"1,165", "4,165", "5,45"})
  void aLaneHoldsItsFullStrips(int lane, double taken) {
    assertEquals(taken, straight(Grain.LENGTHWISE, 30, 170, NONE, MANY).fullBeside(lane));
    assertEquals(0, straight(Grain.LENGTHWISE, 30, 115, NONE, MANY).fullBeside(lane));
  }

  /** Of the lanes 14, 13 and 12 across lengthwise ones lie the other way about. */
  @Test
  void aLaneOffersWhatItsGrainDoes() {
    assertEquals(14, straight(Grain.CROSSWISE, 30, 3, NONE, MANY).lane(1).piece());
    assertEquals(12, straight(Grain.LENGTHWISE, 30, 3, NONE, MANY).lane(1).piece());
  }

  /** Three full strips are cut of five. */
  @Test
  void onTheBiasThoseThatStayOverCountBeforeAFarCorner() {
    CutFabric fabric = bias(Briefs.inch(), 70, 20, 12);
    assertEquals(3, fabric.fullLanes());
    assertEquals(3, fabric.fullLanes(0));
    assertEquals(5, fabric.fullLanes(1));
    assertEquals(10, straight(Grain.LENGTHWISE, 30, 115, NONE, MANY).fullLanes(1));
  }

  @Test
  void linesPastDiscsAreDrawnWhereAShorterStripIsCut() {
    assertEquals(4, bias(Briefs.inch(), 70, 20, 12).past());
    assertEquals(0, bias(Briefs.inch(), 70, 20).past());
    assertEquals(0, straight(Grain.CROSSWISE, 30, 3, new double[] {12}, MANY).past());
  }

  @Test
  void onlyStraightStripsLieBetweenDiscsApartOrInZigzag() {
    CutFabric apart = straight(Grain.CROSSWISE, 30, 3, NONE, Map.of("perLane", 1, "isApart", true));
    assertTrue(apart.isApart());
    assertFalse(apart.isZigzag());
    CutFabric zigzag =
        straight(Grain.LENGTHWISE, 30, 3, NONE, Map.of("perLane", 1, "isZigzag", true));
    assertTrue(zigzag.isZigzag());
    assertFalse(zigzag.isApart());
    assertFalse(bias(Briefs.inch(), 70, 20).isApart());
    assertFalse(bias(Briefs.inch(), 70, 20).isZigzag());
  }

  /** 1 ÷ 50 and, slanting, that by √2; across from the other selvage where it is turned. */
  @Test
  void placesAreTurnedIntoThePicture() {
    double slant = 1 / (50 * Math.sqrt(2));
    assertTurned(.025, 0, 0, .025, straight(Grain.LENGTHWISE, 30, 3, NONE, MANY));
    assertTurned(0, .025, .025, 0, straight(Grain.CROSSWISE, 30, 3, NONE, MANY));
    assertTurned(slant, slant, -slant, slant, bias(Briefs.inch(), 70, 20));
    assertTurned(-slant, slant, -slant, -slant, bias(Briefs.inch(), 70, 21));
  }

  private static void assertTurned(
      double xRun, double xStack, double yRun, double yStack, CutFabric fabric) {
    Turning turning = Turning.of(fabric);
    assertEquals(xRun, turning.xRun(), 1e-12);
    assertEquals(xStack, turning.xStack(), 1e-12);
    assertEquals(yRun, turning.yRun(), 1e-12);
    assertEquals(yStack, turning.yStack(), 1e-12);
  }
}
