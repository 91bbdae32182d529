package frillbook.bias;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Filled;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips past a line of one disc as in {@link BiasLineTest}, 20 long and 10 wide, in a plan. */
class BiasLinePlanTest {
  private static final double ROOT2 = Math.sqrt(2);

  private static final double DISC = 10 * (2 - ROOT2);

  private static BiasCutting cutting(double width, int discs, double disc, double shortest) {
    Pieces pieces = new Pieces(ROOT2, 60.5, 0, shortest, discs, disc, .125);
    return BiasCutting.of(new Fabric(width, 1, 5), pieces, new Join(true, .5, 1));
  }

  private final BiasCutting cutting = cutting(10, 1, DISC, 2 * ROOT2);

  private static BiasComb over(double over) {
    return Filled.of(BiasComb.class, Map.of("over", over));
  }

  private static BiasTrial trial(double ends, double corners, BiasComb line) {
    BesidePieces none = new BesidePieces(0, 0);
    return new BiasTrial(
        4, 20, over(ends), over(corners), line, none, none, new PastPieces(0, 0), 3);
  }

  private final BiasTrial found = trial(-1, -1, BiasComb.ofLine(cutting, 20));

  private final List<CornerStrips> rows = cutting.cornerStrips(found);

  /** Less than a millionth short is enough, for the plainer ways and for the line. */
  @ParameterizedTest
  @CsvSource({
    "-1, -2, 0, true",
    "-2, -1, 0, true",
    "-1, -1, -0.0000001, true",
    "-1, -1, -0.00001, false",
    "-0.0000001, -1, 5, false",
    "-1, 0, 5, false",
    "1, 2, 5, false"
  })
  void theLineIsUsedWhereNothingPlainerIsEnough(
      double ends, double corners, double line, boolean uses) {
    assertEquals(uses, trial(ends, corners, over(line)).usesLine());
  }

  @Test
  void whatTheLineLeavesOverLiesInItsOwnBands() {
    BiasSetting setting =
        Filled.of(
            BiasSetting.class,
            Map.of(
                "endsBand",
                9.0,
                "cornersBand",
                6.0,
                "lineBand",
                3.0,
                "lineRows",
                5,
                "cornerCount",
                2));
    BiasTrial line = trial(-1, -1, over(1));
    assertEquals(3, line.band(setting));
    assertEquals(5, line.lineStrips(setting));
    assertEquals(0, line.cornerDiscs(setting));
    assertEquals(1, line.better().over());
    BiasTrial corners = trial(1, 2, over(5));
    assertEquals(6, corners.band(setting));
    assertEquals(0, corners.lineStrips(setting));
    assertEquals(2, corners.cornerDiscs(setting));
    assertEquals(2, corners.better().over());
    BiasTrial ends = trial(2, 1, over(5));
    assertEquals(9, ends.band(setting));
    assertEquals(0, ends.cornerDiscs(setting));
    assertEquals(2, ends.better().over());
  }

  /**
   * By hand in {@link BiasLineTest}: twelve strips, one before the disc, five past it, four in the
   * far corner; the line that touches the disc lies at 5.857864, the far corner 14.142136 on.
   */
  @Test
  void thePlanTellsWhereTheLineIs() {
    List<BiasOdd> odd = BiasOdd.sorted(rows, cutting.join(), cutting.pieces().stripWidth());
    BiasPlan plan = BiasPlan.of(cutting, List.of(found), found, odd);
    assertTrue(plan.usesLine());
    assertFalse(plan.usesCorners());
    assertEquals(1, plan.lineDiscs());
    assertEquals(5, plan.lineStrips());
    assertEquals(5.857864, plan.lineFirst(), 1e-6);
    assertEquals(14.142136, plan.pastRoom(), 1e-6);
    assertEquals(2, plan.full());
    assertEquals(1, plan.pairs());
  }

  @Test
  void withoutALineThereIsNoneToTellOf() {
    BiasTrial bare =
        new BiasTrial(
            4,
            20,
            BiasComb.of(cutting, 20, 0),
            over(-99),
            over(-99),
            new BesidePieces(0, 0),
            new BesidePieces(0, 0),
            new PastPieces(0, 0),
            3);
    BiasPlan plan =
        BiasPlan.of(
            cutting,
            List.of(bare),
            bare,
            BiasOdd.sorted(
                cutting.cornerStrips(bare), cutting.join(), cutting.pieces().stripWidth()));
    assertEquals(0, plan.lineDiscs());
    assertEquals(0, plan.lineStrips());
    assertEquals(0, plan.lineFirst());
    assertEquals(0, plan.pastRoom());
    assertEquals(5, plan.full());
  }

  /** 4.142136, 4.227393, 4.930152, 6.148944 and 8.245982 across, each √2 times as long. */
  @ParameterizedTest
  @CsvSource({"1,4.142136", "2,4.227393", "3,4.930152", "4,6.148944", "5,8.245982", "6,0"})
  void fiveStripsAreCutPastTheDisc(int number, double across) {
    assertEquals(across, rows.get(number - 1).pastDepth(), 1e-6);
    assertEquals(across * ROOT2, rows.get(number - 1).pastPiece(), 1.5e-6);
  }

  /** 6.148944 across is 8.695920 long. */
  @Test
  void aStripPastTheDiscMustBeLongEnough() {
    PastDisc fourth = cutting.past().get(3);
    double length = fourth.crosswise(10, 14) * ROOT2;
    assertEquals(length, cutting.pastPiece(fourth, 10, 14, 8.6959));
    assertEquals(length, cutting.pastPiece(fourth, 10, 14, length + 1e-6));
    assertEquals(0, cutting.pastPiece(fourth, 10, 14, 8.69593));
    assertEquals(0, cutting.pastPiece(cutting.past().get(5), 10, 14, 1));
  }

  /**
   * 12 long: eight strips, one of 3.857864 before the disc and two of 4.142136 and 2.142136 after
   * it, a pair among them: 12.142136 along the edge, three seams. Past it 31.082829 less five.
   */
  @Test
  void stripsAtTheFarEdgeCountLikeTheOthers() {
    BiasComb comb = BiasComb.ofLine(cutting, 12);
    assertEquals(8, comb.laneCount());
    assertEquals(12.142136, comb.edge(), 1e-6);
    assertEquals(ROOT2 * 12.142136 - 1.5 + 31.082829 - 2.5 - 60, comb.over(), 1e-5);
  }

  /** The disc and the full strip may be too large by a hair, and not by more. */
  @ParameterizedTest
  @CsvSource({
    "5.8578638, 12, true",
    "5.857864, 11.715728, true",
    "5.8578, 12, false",
    "6, 11.7157283, true",
    "6, 11.7157, false"
  })
  void aLineThatIsTooLargeByAHairFits(double width, double length, boolean fits) {
    assertEquals(fits, BiasComb.ofLine(cutting(width, 2, DISC, 2), length).fits());
  }

  /** On fabric 6 wide a full strip is 8.485281 long. */
  @ParameterizedTest
  @CsvSource({"8.4852, true", "8.4852818, true", "8.4853, false"})
  void aFullStripMustBeWorthCuttingBesideALineToo(double shortest, boolean fits) {
    assertEquals(fits, BiasComb.ofLine(cutting(6, 1, DISC, shortest), 20).fits());
  }

  /** Ten of twelve discs lie in the line, two in bands: 100 less 11.715729. */
  @Test
  void bandsAreTakenOffTheLengthOfALine() {
    BiasTrial trial = cutting(10, 12, DISC, 2).attempt(20, 0);
    assertEquals(88.284271, trial.line().longer(), 1e-6);
  }

  /** Square ends take 1 of the waist, and the far corner lies 1 further on. */
  @Test
  void squareEndsLeaveMoreRoomPastTheDisc() {
    Pieces pieces = new Pieces(ROOT2, 60.5, 0, 2 * ROOT2, 1, DISC, .125);
    BiasCutting square = BiasCutting.of(new Fabric(10, 1, 5), pieces, new Join(false, .5, 1));
    assertEquals(15.142136, BiasComb.ofLine(square, 20).room(square.setting()), 1e-6);
  }

  /**
   * On fabric 21 wide with a disc in the near corner six strips begin at 10 to 20 and are shorter
   * than full, the sixth with one end on a long edge already: five are paired.
   */
  @Test
  void aStripThatReachesALongEdgeHasNoPartner() {
    BiasComb comb = BiasComb.of(cutting(21, 1, DISC, 2 * ROOT2), 30, 1);
    assertEquals(6, comb.nearShort());
    assertEquals(5, comb.pairs());
  }

  /** Of the nine of the far corner, from 3 to 19, the last five are their partners. */
  @Test
  void allButThatOneAreEachPairedWithOneOfTheFarCorner() {
    BiasCutting wide = cutting(21, 1, DISC, 2 * ROOT2);
    BesidePieces none = new BesidePieces(0, 0);
    BiasTrial trial =
        new BiasTrial(
            6,
            30,
            over(-999),
            BiasComb.of(wide, 30, 1),
            over(-999),
            none,
            none,
            new PastPieces(0, 0),
            5);
    PairedStrips pairs = PairedStrips.of(trial, wide.setting(), 2);
    assertEquals(5, pairs.count());
    assertEquals(0, pairs.nearBefore());
    assertEquals(4, pairs.farBefore());
  }
}
