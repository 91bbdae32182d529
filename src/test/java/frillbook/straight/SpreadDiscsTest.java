package frillbook.straight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two discs of 10 among strips 2 wide, seams of 1, no strip under 6; worked by hand. */
class SpreadDiscsTest {
  private static final double ROOT24 = Math.sqrt(24);

  private static StraightCutting cutting(Grain grain, double width) {
    Pieces pieces = new Pieces(2, 500, 0, 6, 2, 10, .125);
    return StraightCutting.of(grain, new Fabric(width, 1, 1), pieces, new Join(false, 1, 1));
  }

  private static List<Double> beside(StraightCutting cutting, StraightTrial trial, int count) {
    return cutting.strips(trial).stream().limit(count).map(LaneStrip::piece).toList();
  }

  private static void assertLengths(List<Double> expected, List<Double> actual) {
    assertEquals(expected.size(), actual.size());
    IntStream.range(0, expected.size())
        .forEach(i -> assertEquals(expected.get(i), actual.get(i), 1e-8, "strip " + (i + 1)));
  }

  /**
   * Across fabric 50 wide, 30 long: ten strips, then the discs, their centres 40 apart. A strip
   * whose edge nearest to the centres is o away ends √(25 − o²) from either: o is 3, 1, 0, 1, 3.
   */
  @Test
  void betweenTwoDiscsApartLieStripsThatEndAtTheirRims() {
    StraightCutting cutting = cutting(Grain.CROSSWISE, 50);
    StraightTrial trial = cutting.attempt(30, 0);
    assertEquals(Spread.APART, trial.spread());
    assertEquals(10, trial.abreast().full());
    assertEquals(5, trial.abreast().laneCount());
    double second = 40 - 2 * ROOT24;
    assertLengths(List.of(32.0, second, 30.0, second, 32.0), beside(cutting, trial, 5));
    assertEquals(94 + 2 * second - 5, trial.abreast().besideLast(), 1e-8);
  }

  /** The disc at the far end takes its radius and half a chord: 5 + 4, 5 + √24, 5 + 5. */
  @Test
  void beyondAStripBetweenThemLiesTheFarDisc() {
    StraightCutting cutting = cutting(Grain.CROSSWISE, 50);
    List<LaneStrip> strips = cutting.strips(cutting.attempt(30, 0));
    assertEquals(9, strips.get(0).after(), 1e-8);
    assertEquals(5 + ROOT24, strips.get(1).after(), 1e-8);
    assertEquals(10, strips.get(2).after(), 1e-8);
  }

  /** On fabric as wide as both the strips at the rims are 20 − 10 − 8 = 2: too short. */
  @Test
  void discsThatTouchEndToEndLeaveNothingBetween() {
    StraightCutting cutting = cutting(Grain.CROSSWISE, 20);
    StraightTrial trial = cutting.attempt(30, 0);
    assertEquals(0, trial.abreast().besideLast());
    assertEquals(10 * 19 - 499, trial.abreast().over(), 1e-9);
  }

  /**
   * Along the fabric, its length R between once and twice the discs: the centres are R − 10 apart
   * along it and 10 from each other, so √(100 − (R − 10)²) across, and half a disc lies on either
   * side. The triangle 6, 8, 10, and 10 + √75 for 15. Where R is 10 they lie side by side across.
   */
  @ParameterizedTest
  @CsvSource({"10,20", "16,18", "18,16", "15,18.660254037844386"})
  void discsInZigzagTouchEachOther(int length, double depth) {
    StraightCutting cutting = cutting(Grain.LENGTHWISE, 40);
    Sheet sheet = cutting.sheet(length);
    assertTrue(cutting.attempt(length, 0).inZigzag());
    assertEquals(depth, Comb.depth(sheet, cutting.pieces(), Spread.ZIGZAG, 1), 1e-8);
  }

  /** A length of 20 holds them one behind the other, apart; across the fabric they lie in lines. */
  @Test
  void discsLieInZigzagOnlyAlongTheFabricAndWhereTwoAreTooLong() {
    assertEquals(Spread.APART, cutting(Grain.LENGTHWISE, 40).attempt(20, 0).spread());
    assertEquals(Spread.LINES, cutting(Grain.CROSSWISE, 16).attempt(40, 0).spread());
  }

  /**
   * 16 in of length and 40 of width: discs 18 deep, before them eleven strips. Nine lie beside: the
   * first four touch the near disc alone and end at the far edge, 16 − 5 − √(25 − o²) long; the
   * last four the far one and begin at the near edge; the fifth touches both.
   */
  @Test
  void besideAZigzagStripsTouchOneDiscOrBoth() {
    StraightCutting cutting = cutting(Grain.LENGTHWISE, 40);
    StraightTrial trial = cutting.attempt(16, 0);
    double second = 11 - ROOT24;
    assertEquals(11, trial.abreast().full());
    assertLengths(
        List.of(7.0, second, 6.0, second, 0.0, second, 6.0, second, 7.0, 0.0),
        beside(cutting, trial, 10));
    assertEquals(2 * (13 + 2 * second - 4), net(trial), 1e-8);
  }

  private static double net(StraightTrial trial) {
    return trial.abreast().besideLines() + trial.abreast().besideLast();
  }

  /** Those of the near disc end at the far edge; those of the far one before its rim. */
  @Test
  void stripsBesideTheFarDiscEndBeforeIt() {
    StraightCutting cutting = cutting(Grain.LENGTHWISE, 40);
    List<LaneStrip> strips = cutting.strips(cutting.attempt(16, 0));
    assertEquals(0, strips.get(0).after());
    assertEquals(9, strips.get(8).after(), 1e-8);
    assertEquals(10, strips.get(6).after(), 1e-8);
  }

  /**
   * Fabric 41 wide has 1 left at the far selvage, where the far disc lies with its centre 5 from
   * the selvage. The last strip, from 1 to 3 from it, is 2 from the centre and loses √21 beyond it,
   * the one before, from 3 to 5, all 5.
   */
  @Test
  void whatIsLeftAtTheSelvageMovesTheFarDiscPastTheStrips() {
    StraightCutting cutting = cutting(Grain.LENGTHWISE, 41);
    StraightTrial trial = cutting.attempt(16, 0);
    assertEquals(11, trial.abreast().full());
    List<Double> lengths = beside(cutting, trial, 9);
    assertEquals(11 - Math.sqrt(21), lengths.get(8), 1e-8);
    assertEquals(6, lengths.get(7), 1e-8);
  }
}
