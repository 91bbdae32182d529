package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.bias.BiasPlan;
import frillbook.bias.BiasSetting;
import frillbook.bias.CornerStrips;
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

/** Strips 2 wide, bias cut lines 3 apart along the edge; worked by hand. */
class CutLinesTest {
  private static CutLines lines(CutFabric fabric) {
    return CutLines.of(fabric, FabricSide.all(fabric));
  }

  private static void assertCut(double x, double y, CutLines.CutPoint point) {
    assertEquals(x, point.fabricCutX(), 1e-9);
    assertEquals(y, point.fabricCutY(), 1e-9);
  }

  /**
   * On 40 by 50, of which a band takes 10, strips lie across from the other selvage on 50 by 30;
   * the picture is 50 high. Two strips of the near corner stay over: the first line lies at 12 + 2
   * × 3, the last three strips on.
   */
  private static CutLines turned() {
    BiasPlan plan =
        Filled.of(
            BiasPlan.class,
            Map.of(
                "length",
                Tables.length(40),
                "cut",
                Tables.cut(3, 0),
                "cushion",
                CushionStrips.alike(1, 1),
                "bandLength",
                10.0,
                "longer",
                50.0,
                "shorter",
                30.0,
                "near",
                12.0,
                "nearShort",
                2));
    return lines(new CutFabric(Briefs.inch().brief(), Tables.bias(0, plan, List.of())));
  }

  @Test
  void theFirstLineLiesBehindStripsThatStayOver() {
    CutLines lines = turned();
    assertEquals(0, lines.fabricPast());
    assertEquals(2, lines.fabricFirst());
    assertEquals(3, lines.fabricComb());
    assertEquals(1, lines.fabricEvery());
    assertEquals(.36, lines.fabricFrom(), 1e-9);
    assertEquals(.03, lines.fabricStep(), 1e-9);
    assertEquals(.54, lines.fabricLast(), 1e-9);
    assertEquals(1, lines.fabricYFrom(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, .64",
    "1, .36, 1",
    "2, .42, 1",
    "3, 0, .58",
    "4, 0, .52",
    "6, .54, 1",
    "7, 0, .46",
    "127, 0, .46"
  })
  void linesGoToAndFroFromTheOtherSelvage(int point, double x, double y) {
    assertCut(x, y, turned().fabricCuts().get(point));
  }

  /** Three strips have six ends. */
  @Test
  void theTintEndsWithTheLastStrip() {
    List<CutLines.CutPoint> cuts = turned().fabricCuts();
    assertEquals(cuts.get(5).fabricTint(), cuts.get(6).fabricTint());
    assertEquals(cuts.get(5).fabricTint(), cuts.get(127).fabricTint());
    assertEquals(new Spot(.51, .994), cuts.get(5).fabricTint());
  }

  /**
   * On 60 by 40 two strips lie past discs of 10, which take 9 and 7 of them, square ends 1; full
   * ones follow. One strip of the near corner stays over: the first line lies at 31 + 3 of 40.
   */
  private static CutLines past(int full) {
    Map<String, Object> values =
        new HashMap<>(
            Map.of(
                "length",
                Tables.length(60),
                "cut",
                Tables.cut(full, 1),
                "cushion",
                CushionStrips.alike(1, 1),
                "longer",
                60.0,
                "shorter",
                40.0,
                "near",
                31.0,
                "nearShort",
                1,
                "lineStrips",
                2,
                "full",
                full));
    Map<String, Object> layouts =
        Map.of(
            "past",
            Tables.past(9, 7),
            "biasSetting",
            Filled.of(BiasSetting.class, Map.of("squareEnds", 1.0)),
            "corners",
            List.of(Filled.of(CornerStrips.class, Map.of("pastPiece", 4.0))),
            "odds",
            Tables.odds(4));
    BiasPlan plan = Filled.of(BiasPlan.class, values);
    return lines(
        new CutFabric(Briefs.inch().brief(), Tables.laid(Grain.BIAS, 40, 2, plan, layouts, 3)));
  }

  @Test
  void linesPastDiscsBeginWithTheFirstOfThem() {
    CutLines lines = past(3);
    assertEquals(2, lines.fabricPast());
    assertEquals(1, lines.fabricFirst());
    assertEquals(5, lines.fabricComb());
    assertEquals(.85, lines.fabricFrom(), 1e-9);
    assertEquals(1.225, lines.fabricLast(), 1e-9);
    assertEquals(0, lines.fabricYFrom());
  }

  /**
   * The end of the first strip lies 9 from the long edge at its first line and 8 at its second;
   * there they end. The third strip runs from edge to edge.
   */
  @ParameterizedTest
  @CsvSource({
    "0, .85, 0",
    "1, .075, .775",
    "2, .125, .8",
    "3, .925, 0",
    "4, 1, 0",
    "5, 0, 1",
    "6, .075, 1"
  })
  void linesEndAtTheStripsPastTheDiscs(int point, double x, double y) {
    assertCut(x, y, past(3).fabricCuts().get(point));
  }

  /** Seventy more make 72 strips, of which every second line is drawn: a whole disc is left out. */
  @ParameterizedTest
  @CsvSource({"0, .85, 0", "1, .1, .75", "2, .25, .75", "3, 1, 0", "5, .15, 1"})
  void whereNotAllLinesAreDrawnTheyEndBeforeTheDiscs(int point, double x, double y) {
    assertEquals(2, past(70).fabricEvery());
    assertCut(x, y, past(70).fabricCuts().get(point));
  }

  private static CutLines across(int full) {
    StraightPlan plan =
        Filled.of(
            StraightPlan.class,
            Map.of(
                "length",
                Tables.length(260),
                "cut",
                Tables.cut(full, 0),
                "perLane",
                1,
                "full",
                full));
    return lines(
        new CutFabric(
            Briefs.inch().brief(), Tables.straight(Grain.CROSSWISE, 50, 0, plan, List.of())));
  }

  /** 64 lines are the most: 63 strips, and of 64 every second. Half of two strips is 2 of 130. */
  @Test
  void ofManyLinesEverySecondIsDrawn() {
    assertEquals(1, across(63).fabricEvery());
    assertEquals(2, across(64).fabricEvery());
    assertEquals(2 / 130.0, across(64).fabricStep(), 1e-9);
    assertEquals(128 / 130.0, across(64).fabricLast(), 1e-9);
    assertEquals(2, across(126).fabricEvery());
    assertEquals(3, across(127).fabricEvery());
  }
}
