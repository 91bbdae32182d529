package frillbook.straight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips 3 wide on fabric 40 wide sold by 4 1/2, seams of 1; worked by hand. */
class StraightCuttingTest {
  private static StraightCutting cutting(Grain grain, double share, double run) {
    return cutting(grain, new Fabric(40, share, 4.5), new Pieces(3, run, 0, 12, 0, 10, .125));
  }

  private static StraightCutting cutting(Grain grain, Fabric fabric, Pieces pieces) {
    return StraightCutting.of(grain, fabric, pieces, new Join(false, 1, 1));
  }

  /** A strip of 40 adds 39, and 9 in hold three: just the 117 of a run of 118. */
  @Test
  void threeStripsAreEnoughForThreeTimesWhatOneAdds() {
    StraightTrial trial = cutting(Grain.CROSSWISE, 1, 118).attempt(2, 1);
    assertEquals(9, trial.stack());
    assertEquals(3, trial.better().full());
    assertEquals(0, trial.better().over(), 1e-9);
    assertTrue(trial.enough());
    assertEquals(1, trial.kept());
  }

  /** 4 1/2 in hold one strip, 117 − 39 = 78 short. */
  @Test
  void aLengthThatIsNotEnoughIsKeptAsTooSmall() {
    StraightTrial trial = cutting(Grain.CROSSWISE, 1, 118).attempt(1, 0);
    assertEquals(-78, trial.better().over(), 1e-9);
    assertFalse(trial.enough());
    assertEquals(1, trial.kept());
  }

  /** Thirteen strips lie side by side in 40; three steps leave 13 1/2, and each adds 12 1/2. */
  @Test
  void stripsAlongTheFabricAreAsLongAsWhatIsBought() {
    StraightTrial trial = cutting(Grain.LENGTHWISE, 1, 118).attempt(3, 2);
    assertEquals(13, trial.better().full());
    assertEquals(13 * 12.5 - 117, trial.better().over(), 1e-9);
  }

  /** 10 × 4 1/2 × 0.9 = 40.5. */
  @Test
  void washingShortensWhatWasBought() {
    assertEquals(40.5, cutting(Grain.CROSSWISE, .9, 118).attempt(10, 0).stack(), 1e-12);
  }

  /**
   * Nine in hold the three strips across that are wanted, if nothing is lost at the ends; with 1/4
   * in lost there is room for two, and it takes a step more. Along the fabric each of the thirteen
   * strips is 1/4 in shorter.
   */
  @Test
  void straighteningTheEndsTakesFromTheLength() {
    Fabric squared = new Fabric(40, 1, 4.5, .25);
    Pieces pieces = new Pieces(3, 118, 0, 12, 0, 10, .125);
    StraightCutting across = cutting(Grain.CROSSWISE, squared, pieces);
    assertEquals(2, across.attempt(2, 1).better().full());
    assertTrue(across.attempt(3, 2).enough());
    StraightTrial along = cutting(Grain.LENGTHWISE, squared, pieces).attempt(3, 2);
    assertEquals(13 * 12.25 - 117, along.better().over(), 1e-9);
  }

  @Test
  void aSheetIsTurnedAsTheStripsLie() {
    assertEquals(new Sheet(40, 27), cutting(Grain.CROSSWISE, 1, 118).sheet(27));
    assertEquals(new Sheet(27, 40), cutting(Grain.LENGTHWISE, 1, 118).sheet(27));
  }

  /**
   * Seven discs of 10 across 43 in: four fit in a line, two lines. On 45 in of length there is room
   * for four lines, which need only two in each; on 9 in for none, which is tried as one line.
   */
  @ParameterizedTest
  @CsvSource({"10,7,4,2,2,4", "2,7,4,2,7,1", "10,3,3,1,1,3", "10,0,1,0,1,0"})
  void asManyDiscsInALineAsFitAreTriedAndAsFew(
      int steps, int discs, int most, int fewLines, int fewest, int manyLines) {
    StraightTrial trial =
        cutting(Grain.CROSSWISE, new Fabric(43, 1, 4.5), new Pieces(3, 118, 0, 12, discs, 10, .125))
            .attempt(steps, 0);
    assertEquals(most, trial.abreast().perLine());
    assertEquals(fewLines, trial.abreast().lines());
    assertEquals(fewest, trial.stacked().perLine());
    assertEquals(manyLines, trial.stacked().lines());
  }

  /** A disc wider than the fabric is long is tried alone in its line. */
  @Test
  void evenADiscThatDoesNotFitIsTriedInALine() {
    StraightTrial trial =
        cutting(Grain.LENGTHWISE, new Fabric(43, 1, 4.5), new Pieces(3, 118, 0, 12, 2, 10, .125))
            .attempt(2, 0);
    assertEquals(1, trial.abreast().perLine());
    assertEquals(-117, trial.abreast().over());
  }

  private static StraightTrial trial(double abreast, double stacked) {
    return new StraightTrial(1, 9, 9, 9, 1, false, comb(abreast), comb(stacked), 0);
  }

  private static Comb comb(double over) {
    return new Comb(1, 1, 1, 0, 0, 0, 0, 8, 8, 0, 0, 0, over);
  }

  @Test
  void theWayThatYieldsMoreIsTaken() {
    assertEquals(2, trial(1, 2).better().over());
    assertTrue(trial(1, 2).isStacked());
    assertEquals(Spread.LINES, trial(1, 2).spread());
    assertEquals(2, trial(2, 1).better().over());
    assertFalse(trial(2, 1).isStacked());
  }

  /** A gain below a millionth is none. */
  @Test
  void linesAreStackedOnlyForAGain() {
    assertFalse(trial(2, 2).isStacked());
    assertFalse(trial(2, 2.0000004).isStacked());
    assertTrue(trial(2, 2.000001).isStacked());
  }
}
