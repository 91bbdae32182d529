package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

/** Discs of 10 among strips 2 wide; worked by hand. */
class FabricDiscTest {
  private static List<FabricDisc> straight(
      Grain grain, double width, double length, int discs, Map<String, Object> plan) {
    Map<String, Object> values = new HashMap<>(plan);
    values.put("length", Tables.length(length));
    values.put("cut", Tables.cut(3, 0));
    StraightPlan laid = Filled.of(StraightPlan.class, values);
    return FabricDisc.all(
        new CutFabric(
            Briefs.inch().brief(), Tables.straight(grain, width, discs, laid, List.of())));
  }

  /** Discs in a band lie three side by side on fabric 50 wide. */
  private static List<FabricDisc> bias(double length, int discs, Map<String, Object> plan) {
    Map<String, Object> values = new HashMap<>(plan);
    values.put("length", Tables.length(length));
    values.put("cut", Tables.cut(3, 0));
    values.put("cushion", CushionStrips.alike(1, 1));
    return FabricDisc.all(
        new CutFabric(
            Briefs.inch().brief(),
            Tables.bias(discs, Filled.of(BiasPlan.class, values), List.of())));
  }

  private static void assertDisc(double run, double stack, double x, double y, FabricDisc disc) {
    assertEquals(run, disc.fabricDiscRun(), 1e-9);
    assertEquals(stack, disc.fabricDiscStack(), 1e-9);
    assertEquals(x, disc.fabricDiscX(), 1e-9);
    assertEquals(y, disc.fabricDiscY(), 1e-9);
  }

  /** Three strips take 6; lines of two. The picture is 50 high, and across lies upwards. */
  @ParameterizedTest
  @CsvSource({"0,5,11", "1,15,11", "2,5,21", "3,15,21"})
  void discsLieInLinesBehindTheStrips(int disc, double run, double stack) {
    Map<String, Object> plan = Map.of("full", 3, "perLine", 2, "lines", 2);
    assertDisc(
        run, stack, stack / 50, run / 50, straight(Grain.CROSSWISE, 50, 40, 4, plan).get(disc));
    assertDisc(
        run, stack, run / 60, stack / 60, straight(Grain.LENGTHWISE, 50, 120, 4, plan).get(disc));
  }

  @Test
  void elevenDiscsLeaveTheTwelfthPlaceEmpty() {
    List<FabricDisc> discs =
        straight(Grain.CROSSWISE, 50, 40, 11, Map.of("full", 3, "perLine", 4, "lines", 3));
    assertEquals(12, discs.size());
    assertDisc(25, 31, .62, .5, discs.get(10));
    assertDisc(0, 0, 0, 0, discs.get(11));
  }

  /** The second lies at the far end: 50 − 5 across, beside the first. */
  @Test
  void ofTwoDiscsApartTheSecondLiesAtTheFarEnd() {
    List<FabricDisc> discs =
        straight(Grain.CROSSWISE, 50, 40, 2, Map.of("full", 3, "perLine", 2, "isApart", true));
    assertDisc(5, 11, .22, .1, discs.get(0));
    assertDisc(45, 11, .22, .9, discs.get(1));
    assertEquals(new Spot(.22, .9), discs.get(1).centre());
  }

  /** 16 along and 40 across: the second lies in the far corner, at 11 and 35. */
  @Test
  void ofTwoDiscsInZigzagTheSecondLiesInTheFarCorner() {
    List<FabricDisc> discs =
        straight(Grain.LENGTHWISE, 40, 16, 2, Map.of("full", 3, "perLine", 1, "isZigzag", true));
    assertDisc(5, 11, .125, .275, discs.get(0));
    assertDisc(11, 35, .275, .875, discs.get(1));
  }

  /**
   * 90 long, a band of 20 at the end: the strips lie on 70 by 50. Pushed out by 2 and by 4, the
   * discs in the corners lie at 6 and at 70 − 7, 50 − 7; the others three abreast from 70 on.
   */
  @Test
  void onTheBiasDiscsLieInCornersAndBands() {
    List<FabricDisc> discs =
        bias(
            90,
            6,
            Map.of(
                "cornerDiscs",
                2,
                "bandLength",
                20.0,
                "longer",
                70.0,
                "shorter",
                50.0,
                "nearSlack",
                2.0,
                "farSlack",
                4.0));
    assertDisc(6, 6, .12, .12, discs.get(0));
    assertDisc(63, 43, 1.26, .86, discs.get(1));
    assertDisc(75, 5, 1.5, .1, discs.get(2));
    assertDisc(75, 25, 1.5, .5, discs.get(4));
    assertDisc(85, 5, 1.7, .1, discs.get(5));
  }

  /** Shorter than wide: strips lie on 30 by 50, the longer side across from the other selvage. */
  @Test
  void onFabricShorterThanWideTheyAreTurned() {
    List<FabricDisc> discs =
        bias(40, 2, Map.of("cornerDiscs", 1, "bandLength", 10.0, "longer", 50.0, "shorter", 30.0));
    assertDisc(5, 5, .1, .9, discs.get(0));
    assertDisc(45, 35, .7, .1, discs.get(1));
  }

  /** In a line along the far long edge: 50 − 5. */
  @Test
  void inALineTheyLieAlongTheLongEdge() {
    List<FabricDisc> discs =
        bias(80, 3, Map.of("usesLine", true, "lineDiscs", 3, "longer", 80.0, "shorter", 50.0));
    assertDisc(5, 45, .1, .9, discs.get(0));
    assertDisc(25, 45, .5, .9, discs.get(2));
  }
}
