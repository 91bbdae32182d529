package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.bias.BesideDisc;
import frillbook.bias.BiasOdd;
import frillbook.bias.BiasPlan;
import frillbook.bias.CornerStrips;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.OddPiece;
import frillbook.grains.OddRow;
import frillbook.offcut.Tables;
import frillbook.picture.BesideStrips.BesideStrip;
import frillbook.picture.BesideStrips.Deeps;
import frillbook.picture.BesideStrips.Runs;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Bias strips 2 wide with slanting ends on 60 by 40, a disc in either corner; worked by hand.
 *
 * <p>The last cut lines lie 10 from the near corner and 20 from the far one, at right angles: 10
 * and 50.710678 deep. The piece next to either is too wide for its corner, for its line would meet
 * the edges at 41. Of the next two the left are 8 and 4 1/2 long and the right 9 and 5, in the far
 * corner 6 and 3 1/2, 7 and 4, and all are cut.
 */
class BesideCornerTest {
  private static final double[] ALL = {9, 8, 7, 6, 5, 4.5, 4, 3.5};

  private static CutFabric fabric(int cornerDiscs, double farSlack, double... odd) {
    BiasPlan plan =
        Filled.of(
            BiasPlan.class,
            Map.of(
                "length",
                Tables.length(60),
                "cut",
                Tables.cut(3, odd.length),
                "cushion",
                CushionStrips.alike(1, 1),
                "cornerDiscs",
                cornerDiscs,
                "longer",
                60.0,
                "shorter",
                40.0,
                "near",
                10 * Math.sqrt(2),
                "far",
                20 * Math.sqrt(2),
                "farSlack",
                farSlack));
    CornerStrips none = row(0, 0, 0, 0);
    List<CornerStrips> corners =
        List.of(none, row(9, 8, 7, 6), row(5, 4.5, 4, 3.5), none, none, none);
    List<BesideDisc> beside = List.of(line(41), line(40.0000005), line(38), line(36));
    Map<String, Object> layouts = Map.of("corners", corners, "beside", beside, "odds", odds(odd));
    return new CutFabric(
        Briefs.inch().with(Grain.BIAS).brief(), Tables.laid(Grain.BIAS, 40, 2, plan, layouts, 3));
  }

  private static CornerStrips row(double one, double two, double three, double four) {
    return Filled.of(
        CornerStrips.class,
        Map.of("nearRight", one, "nearLeft", two, "farRight", three, "farLeft", four));
  }

  private static BesideDisc line(double line) {
    return Filled.of(BesideDisc.class, Map.of("besideLine", line));
  }

  private static List<OddRow> odds(double... longestFirst) {
    OddPiece none = new OddPiece(0, 0);
    BiasOdd bias = new BiasOdd(0, 0, 0, 0);
    return Arrays.stream(longestFirst)
        .mapToObj(
            odd ->
                Filled.of(
                    OddRow.class,
                    Map.of("crosswise", none, "lengthwise", none, "bias", bias, "oddPiece", odd)))
        .toList();
  }

  private static BesideStrips strips(CutFabric fabric, boolean far) {
    return BesideCorner.of(fabric, FabricSide.all(fabric), far).strips(0);
  }

  private static void assertStrip(
      int lane, double piece, double start, int first, Runs runs, Deeps deeps, BesideStrip strip) {
    assertEquals(lane, strip.besideLane());
    assertEquals(piece, strip.besidePiece(), 1e-9);
    assertEquals(piece, strip.besideOffered(), 1e-9);
    assertEquals(Math.min(deeps.one(), deeps.two()), strip.besideDepth(), 1e-6);
    assertEquals(start, strip.besideStart(), 1e-6);
    assertEquals(first, strip.besideFirst());
    for (int corner = 0; corner < 4; corner++) {
      assertEquals(runs.corner(corner), strip.runs().corner(corner), 1e-6, corner + "");
    }
    assertEquals(deeps.one(), strip.deeps().one(), 1e-6);
    assertEquals(deeps.two(), strip.deeps().two(), 1e-6);
  }

  /** 4 and 6 deep, from as far left of the middle as deep, or up to as far right of it. */
  @Test
  void piecesOfTheNearCornerLieLeftAndRightOfTheDisc() {
    BesideStrips near = strips(fabric(2, 0, ALL), false);
    assertEquals(2, near.besideLeftCut());
    assertEquals(2, near.besideRightCut());
    assertEquals(1, near.besideSkip());
    assertEquals(5, near.besideStrips());
    assertEquals(10, near.besideFrom(), 1e-9);
    List<BesideStrip> rows = near.besideRows();
    assertStrip(-2, 8, -6, 2, new Runs(-4, 4, 2, -6), new Deeps(8, 6), rows.get(0));
    assertStrip(-3, 4.5, -4, 2, new Runs(-2, 2.5, .5, -4), new Deeps(6, 4), rows.get(1));
    assertStrip(0, 0, 0, 0, new Runs(0, 0, 0, 0), new Deeps(0, 0), rows.get(2));
    assertStrip(-3, 5, -1, 0, new Runs(4, -1, 1, 6), new Deeps(4, 6), rows.get(3));
    assertStrip(-2, 9, -3, 0, new Runs(6, -3, -1, 8), new Deeps(6, 8), rows.get(4));
    assertEquals(13, rows.size());
    assertEquals(rows.get(4), rows.get(12));
  }

  /** 60√2 = 84.852814 less how deep the outer side lies, or that less 40√2 = 56.568542. */
  @Test
  void piecesOfTheFarCornerLieTheOtherWayAbout() {
    BesideStrips far = strips(fabric(2, 0, ALL), true);
    assertEquals(1, far.besideSkip());
    assertEquals(5, far.besideStrips());
    assertEquals(50.710678, far.besideFrom(), 1e-6);
    List<BesideStrip> rows = far.besideRows();
    assertStrip(
        1,
        6,
        22.142136,
        0,
        new Runs(28.142136, 22.142136, 24.142136, 30.142136),
        new Deeps(52.710678, 54.710678),
        rows.get(0));
    assertStrip(
        2,
        3.5,
        22.642136,
        0,
        new Runs(26.142136, 22.642136, 24.642136, 28.142136),
        new Deeps(54.710678, 56.710678),
        rows.get(1));
    assertStrip(
        0,
        0,
        14.142136,
        0,
        new Runs(14.142136, 14.142136, 14.142136, 14.142136),
        new Deeps(70.710678, 70.710678),
        rows.get(2));
    assertStrip(
        2,
        4,
        -1.857864,
        2,
        new Runs(.142136, 4.142136, 2.142136, -1.857864),
        new Deeps(56.710678, 54.710678),
        rows.get(3));
    assertStrip(
        1,
        7,
        -3.857864,
        2,
        new Runs(-1.857864, 5.142136, 3.142136, -3.857864),
        new Deeps(54.710678, 52.710678),
        rows.get(4));
  }

  /** A hair too wide is not; pushed out by 2 the next line meets the edges at 42 and 40. */
  @Test
  void aDiscPushedOutMakesMorePiecesTooWide() {
    assertEquals(2, strips(fabric(2, 2, ALL), true).besideSkip());
    assertEquals(3, strips(fabric(2, 2.1, ALL), true).besideSkip());
    assertEquals(1, strips(fabric(2, 2, ALL), false).besideSkip());
  }

  @Test
  void withoutADiscNoPieceIsTooWide() {
    assertEquals(1, strips(fabric(1, 2, ALL), false).besideSkip());
    assertEquals(0, strips(fabric(1, 2, ALL), true).besideSkip());
    assertEquals(0, strips(fabric(0, 2, ALL), false).besideSkip());
  }

  /** Of equally long ones those in the near corner come first; here 9, 8 and 7 alone are cut. */
  @Test
  void onlyTheLongestAreDrawn() {
    CutFabric fabric = fabric(2, 0, 9, 8, 7);
    assertEquals(3, strips(fabric, false).besideStrips());
    assertEquals(1, strips(fabric, false).besideLeftCut());
    assertEquals(0, strips(fabric, true).besideLeftCut());
    assertEquals(1, strips(fabric, true).besideRightCut());
    assertEquals(2, strips(fabric, true).besideStrips());
    CutFabric two = fabric(2, 0, 9, 8);
    assertEquals(1, strips(two, false).besideRightCut());
    assertEquals(0, strips(two, true).besideRightCut());
  }

  @Test
  void whereNoneIsCutThereIsNothingToDraw() {
    BesideStrips none = strips(fabric(2, 0), false);
    assertEquals(0, none.besideStrips());
    assertStrip(0, 0, 0, 0, new Runs(0, 0, 0, 0), new Deeps(0, 0), none.besideRows().get(0));
  }
}
