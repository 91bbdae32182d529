package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.bias.BiasPlan;
import frillbook.bias.BiasSetting;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.offcut.Tables;
import frillbook.picture.BesideStrips.BesideStrip;
import frillbook.picture.BesideStrips.Deeps;
import frillbook.picture.BesideStrips.Runs;
import frillbook.straight.StraightPlan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips 2 wide; worked by hand. The picture is 40 high, or 50 where strips lie across. */
class StripEndTest {
  private static final BesideStrips NONE = beside();

  private static BesideStrips beside(BesideStrip... strips) {
    return new BesideStrips(0, 0, 0, strips.length, 0, List.of(strips), List.of());
  }

  private static void assertEnd(double stack, double run, double x, double y, StripEnd end) {
    assertEquals(stack, end.stripEndStack(), 1e-9);
    assertEquals(run, end.stripEndRun(), 1e-9);
    assertEquals(x, end.stripEndX(), 5.1e-4);
    assertEquals(y, end.stripEndY(), 5.1e-4);
  }

  /**
   * Two strips past a line of discs, of which 9 and 7 are taken; square ends take 1. Cut lines lie
   * 3 apart, the first meets both edges at 35; the fabric is 60 by 40, or 30 by 40.
   */
  private static List<StripEnd> past(double length, double longer, double shorter) {
    BiasPlan plan =
        Filled.of(
            BiasPlan.class,
            Map.of(
                "length",
                Tables.length(length),
                "cut",
                Tables.cut(3, 0),
                "cushion",
                CushionStrips.alike(1, 1),
                "lineFirst",
                35.0,
                "longer",
                longer,
                "shorter",
                shorter));
    Map<String, Object> layouts =
        Map.of(
            "past",
            Tables.past(9, 7),
            "biasSetting",
            Filled.of(BiasSetting.class, Map.of("squareEnds", 1.0)));
    CutFabric fabric =
        new CutFabric(Briefs.inch().brief(), Tables.laid(Grain.BIAS, 40, 2, plan, layouts, 3));
    return StripEnd.all(fabric, 2, NONE, NONE);
  }

  /**
   * From the short edge up the line at 35 to 40 − 9, one further along the end of the first strip,
   * down the line at 38 to 40 − 7, and at last along the line at 41 to the long edge.
   */
  @ParameterizedTest
  @CsvSource({"1,35,0", "2,31,4", "3,32,6", "4,33,5", "5,34,7", "6,40,1", "7,40,1", "66,40,1"})
  void theLineGoesDownAndUpTheEndsPastTheDiscs(int number, double stack, double run) {
    List<StripEnd> ends = past(60, 60, 40);
    assertEquals(66, ends.size());
    assertEnd(stack, run, run / 40, stack / 40, ends.get(number - 1));
  }

  /** On 30 by 40 the strips lie across, from the other selvage; the short edge ends the last. */
  @ParameterizedTest
  @CsvSource({"1,35,0", "2,21,14", "5,24,17", "6,30,11"})
  void onFabricShorterThanWideItIsTurned(int number, double stack, double run) {
    assertEnd(stack, run, stack / 40, 1 - run / 40, past(30, 40, 30).get(number - 1));
  }

  @Test
  void noLineRunsOffTheFabric() {
    assertEquals(5, past(60, 5, 40).get(2).stripEndRun());
    assertEquals(5, past(60, 5, 40).get(4).stripEndRun());
  }

  private static BesideStrip strip(double run, double one, double two) {
    return new BesideStrip(0, 0, 0, true, 9, 0, 0, 0, new Runs(run, 1, 2, 3), new Deeps(one, two));
  }

  private static List<StripEnd> beforeDisc(Grain grain, String spread) {
    StraightPlan plan =
        Filled.of(
            StraightPlan.class,
            Map.of(
                "length", Tables.length(40), "cut", Tables.cut(3, 0), spread, true, "perLane", 1));
    CutFabric fabric =
        new CutFabric(Briefs.inch().brief(), Tables.straight(grain, 50, 2, plan, List.of()));
    return StripEnd.all(fabric, 0, beside(strip(45, 20, 22)), beside(strip(43, 22, 24)));
  }

  @ParameterizedTest
  @CsvSource({"1,20,45", "2,22,45", "3,22,43", "4,24,43", "5,22,43", "66,24,43"})
  void whereDiscsLieApartTheLineGoesAlongEveryEnd(int number, double stack, double run) {
    StripEnd across = beforeDisc(Grain.CROSSWISE, "isApart").get(number - 1);
    assertEnd(stack, run, stack / 50, run / 50, across);
    StripEnd along = beforeDisc(Grain.LENGTHWISE, "isApart").get(number - 1);
    assertEnd(stack, run, run / 50, stack / 50, along);
  }

  @ParameterizedTest
  @CsvSource({"1,22", "2,24", "3,22"})
  void inZigzagOnlyThoseBeforeTheFarDiscDo(int number, double stack) {
    StripEnd end = beforeDisc(Grain.LENGTHWISE, "isZigzag").get(number - 1);
    assertEnd(stack, 43, 43 / 50.0, stack / 50, end);
  }

  @Test
  void acrossTheFabricInLinesThereAreNone() {
    beforeDisc(Grain.CROSSWISE, "isStacked").forEach(end -> assertEnd(0, 0, 0, 0, end));
  }

  /** Ten lanes of three strips of 15 on 45 by 40. */
  private static List<StripEnd> endToEnd(int full, Map<String, Object> more) {
    Map<String, Object> values = new HashMap<>(more);
    values.putAll(
        Map.of(
            "length",
            Tables.length(45),
            "cut",
            Tables.cut(full, 0),
            "perLane",
            3,
            "full",
            10,
            "stripLength",
            15.0));
    CutFabric fabric =
        new CutFabric(
            Briefs.inch().brief(),
            Tables.straight(
                Grain.LENGTHWISE, 40, 2, Filled.of(StraightPlan.class, values), List.of()));
    return StripEnd.all(fabric, 0, NONE, NONE);
  }

  /**
   * One strip in each of three lanes beside the discs: the first line, 15 from the far edge, goes
   * across all 13 lanes, the others across ten.
   */
  @ParameterizedTest
  @CsvSource({
    "1,0,30",
    "2,26,30",
    "3,0,30",
    "4,0,15",
    "5,20,15",
    "6,0,15",
    "8,20,0",
    "9,0,0",
    "29,20,0",
    "30,0,0",
    "31,0,45",
    "32,26,45",
    "33,26,45",
    "34,20,45",
    "35,26,45",
    "66,26,45"
  })
  void linesGoAcrossLanesWhereStripsLieEndToEnd(int number, double stack, double run) {
    List<StripEnd> ends = endToEnd(33, Map.of("laneCount", 3, "moreLast", 1));
    assertEnd(stack, run, run / 40, stack / 40, ends.get(number - 1));
  }

  /**
   * Two lanes beside the first line of discs hold one strip, three beside the last two: the second
   * line goes on across those three, from 24 to 30.
   */
  @ParameterizedTest
  @CsvSource({"2,30,30", "5,20,15", "32,30,45", "33,30,15", "34,24,15", "35,30,15", "36,30,15"})
  void linesGoOnAcrossTheLastLanes(int number, double stack, double run) {
    List<StripEnd> ends =
        endToEnd(38, Map.of("laneCount", 5, "whole", 2, "moreWhole", 1, "moreLast", 2));
    assertEnd(stack, run, run / 40, stack / 40, ends.get(number - 1));
  }

  @ParameterizedTest
  @CsvSource({"33,30,15", "36,30,0", "37,24,0", "39,30,0"})
  void everyFurtherDivisionOfTheLastLanesHasItsLine(int number, double stack, double run) {
    List<StripEnd> ends =
        endToEnd(41, Map.of("laneCount", 5, "whole", 2, "moreWhole", 1, "moreLast", 3));
    assertEnd(stack, run, run / 40, stack / 40, ends.get(number - 1));
  }

  /** Thirty strips fill the ten lanes: nothing is cut beside the discs. */
  @ParameterizedTest
  @CsvSource({"2,20,30", "32,20,45", "33,20,45", "34,20,45"})
  void withoutStripsBesideTheDiscsTheLinesEndBeforeThem(int number, double stack, double run) {
    List<StripEnd> ends =
        endToEnd(30, Map.of("laneCount", 5, "whole", 2, "moreWhole", 1, "moreLast", 2));
    assertEnd(stack, run, run / 40, stack / 40, ends.get(number - 1));
  }
}
