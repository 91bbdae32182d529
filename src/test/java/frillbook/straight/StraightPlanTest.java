package frillbook.straight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.cutting.SearchReach;
import frillbook.cutting.Tally;
import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Straight strips with seams of 1, laid and found; worked by hand. */
class StraightPlanTest {
  private static final Join SEAM = new Join(false, 1, 1);

  /** As in {@link OwnStripsTest}: three cushions of 27 from strips 4 wide, two to a cushion. */
  private static final Pieces THREE = new Pieces(4, 81, 3, 0, 6, 30, 0, 10, .125, 0);

  private static StraightFinding found(
      Grain grain, Fabric fabric, Pieces pieces, SearchReach reach) {
    return StraightFinding.of(StraightCutting.of(grain, fabric, pieces, SEAM), true, reach);
  }

  /** Six of 14 lie two side by side, in three rows of 42; 32, 48, 40, 44, 42 and 41 are tried. */
  @Test
  void everyCushionHasStripsOfItsOwn() {
    StraightFinding found =
        found(Grain.LENGTHWISE, new Fabric(10, 1, 1), THREE, new SearchReach(6, 1));
    assertEquals(
        List.of(32, 48, 40, 44, 42, 41),
        found.trials().stream().map(StraightTrial::tried).toList());
    StraightPlan plan = found.plan().orElseThrow();
    assertEquals(42, plan.buyLength());
    assertEquals(5, plan.length().row());
    assertEquals(14, plan.stripLength());
    assertEquals(2, plan.full());
    assertEquals(3, plan.perLane());
    assertEquals(6, plan.offered());
    assertEquals(0, plan.served());
    assertEquals(new Tally(0, 6, 0, 0, 6), plan.cut().all());
    assertEquals(3, plan.cut().joinCount());
  }

  /** A row of two strips more or less is twice the 13 that a strip adds. */
  @ParameterizedTest
  @CsvSource({"41,-26", "42,0", "56,26"})
  void whatIsOverIsCountedInStrips(int length, double over) {
    StraightTrial trial =
        StraightCutting.of(Grain.LENGTHWISE, new Fabric(10, 1, 1), THREE, SEAM).attempt(length, 0);
    assertEquals(over, trial.better().over(), 1e-9);
  }

  /** Lengthwise two of 14 each; across, where a strip is 10 long, three and a last one of 6. */
  @Test
  void aCushionIsMadeOfOtherStripsAcross() {
    Fabric fabric = new Fabric(10, 1, 1);
    assertEquals(
        CushionStrips.alike(2, 14),
        StraightCutting.of(Grain.LENGTHWISE, fabric, THREE, SEAM).cushion());
    assertEquals(
        CushionStrips.of(THREE, SEAM, 10),
        StraightCutting.of(Grain.CROSSWISE, fabric, THREE, SEAM).cushion());
  }

  private static Pieces twoDiscs(double run) {
    return new Pieces(2, run, 0, 6, 2, 10, .125);
  }

  /** As in {@link SpreadDiscsTest}, 16 in of length: eleven strips, the discs 18 deep. */
  @Test
  void aPlanTellsOfDiscsInZigzag() {
    StraightPlan plan =
        found(Grain.LENGTHWISE, new Fabric(40, 1, 16), twoDiscs(100), new SearchReach(1, 1))
            .plan()
            .orElseThrow();
    assertTrue(plan.isZigzag());
    assertFalse(plan.isApart());
    assertFalse(plan.isStacked());
    assertEquals(11, plan.full());
    assertEquals(1, plan.rimsTaken());
  }

  /** 30 in of length across 50: ten strips, and the discs at either end of the others. */
  @Test
  void aPlanTellsOfDiscsApart() {
    StraightPlan plan =
        found(Grain.CROSSWISE, new Fabric(50, 1, 30), twoDiscs(500), new SearchReach(1, 1))
            .plan()
            .orElseThrow();
    assertTrue(plan.isApart());
    assertFalse(plan.isZigzag());
    assertEquals(10, plan.full());
    assertEquals(2, plan.rimsTaken());
  }

  @Test
  void fabricTooNarrowIsNotSearched() {
    StraightFinding none =
        StraightFinding.of(
            StraightCutting.of(Grain.CROSSWISE, new Fabric(50, 1, 30), twoDiscs(500), SEAM),
            false,
            new SearchReach(1, 1));
    assertEquals(List.of(), none.trials());
    assertTrue(none.plan().isEmpty());
    assertEquals(Lane.MOST, none.strips().size());
    assertEquals(0, none.odd().get(0).odd());
  }

  /**
   * Strips 3 wide along 45, none longer than 15 and none under 8, on a width of 40; three discs of
   * 10, two in the first line. Six lanes lie before the discs, four beside the first line, three
   * beside the second. The first leaves 25, a strip of 15 and one of 10; the second 35, two of 15
   * and 5, which is too short. So 18 + 4 + 6 strips add 14 each, and four of 10 add 9.
   */
  @Test
  void besideAShorterLastLineMoreStripsLieEndToEnd() {
    Pieces pieces = new Pieces(3, 118, 1, 0, 8, 15, 3, 10, .125, 0);
    StraightCutting cutting =
        StraightCutting.of(Grain.LENGTHWISE, new Fabric(40, 1, 1), pieces, SEAM);
    Comb comb = Comb.of(cutting, cutting.sheet(45), Spread.LINES, 2);
    assertEquals(6, comb.full());
    assertEquals(7, comb.laneCount());
    assertEquals(4, comb.whole());
    assertEquals(1, comb.moreWhole());
    assertEquals(2, comb.moreLast());
    assertEquals(10, comb.reachWhole(), 1e-9);
    assertEquals(5, comb.reachLast(), 1e-9);
    assertEquals(5, comb.lastRoom(), 1e-9);
    assertEquals(4 * 9, comb.besideLines(), 1e-9);
    assertEquals(0, comb.besideLast(), 1e-9);
    assertEquals(28 * 14 + 4 * 9 - 117, comb.over(), 1e-9);
  }

  /**
   * Strips 3.2 wide across 50, three discs of 10, two in the first line. The fourth lane, from 9.6
   * to 12.8, begins 4.6 past the centres of the first line and has its middle beside the second:
   * √(25 − 4.6²) of the 35 that the first leaves is less than what the second does. The seventh,
   * from 19.2 to 22.4, begins 4.2 past the centre of the second and has its middle beyond.
   */
  @Test
  void aLaneMayBeginBesideALineAndHaveItsMiddleBeyond() {
    Pieces pieces = new Pieces(3.2, 500, 0, 12, 3, 10, .125);
    Lanes lanes =
        new Lanes(
            new Sheet(50, 38.4),
            pieces,
            SEAM,
            Spread.LINES,
            CushionStrips.alike(1, 12),
            50,
            2,
            2,
            5);
    List<Lane> all = Lane.beside(pieces, 38.4);
    assertEquals(7, lanes.count());
    assertEquals(4, lanes.besideWholeLines());
    LaneStrip fourth = lanes.strip(all.get(3), all);
    assertEquals(1.959592, fourth.wholeTakes(), 5e-7);
    assertEquals(5, fourth.lastTakes(), 1e-9);
    assertEquals(35 - 1.959592, fourth.piece(), 5e-7);
    LaneStrip seventh = lanes.strip(all.get(6), all);
    assertEquals(2.712932, seventh.lastTakes(), 5e-7);
    assertEquals(45 - 2.712932, seventh.piece(), 5e-7);
    assertEquals(45 - 2.712932, lanes.roomOfLastLane(all), 5e-7);
  }

  /**
   * As in {@link DividedStripsTest}: ten lanes of three, and one in each of the three by the discs.
   */
  @Test
  void stripsBehindDiscsAreOfferedToo() {
    Pieces pieces = new Pieces(3, 118, 1, 0, 8, 15, 2, 10, .125, 0);
    StraightPlan plan =
        found(Grain.LENGTHWISE, new Fabric(40, 1, 45), pieces, new SearchReach(1, 1))
            .plan()
            .orElseThrow();
    assertEquals(33, plan.offered());
    assertEquals(9, plan.cut().all().full());
  }
}
