package frillbook.straight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Strips 3 wide along fabric 40 wide, thirteen side by side, none longer than 15 and none under 8;
 * seams of 1; one strip is joined for the whole order; worked by hand.
 */
class DividedStripsTest {
  private static StraightTrial trial(Grain grain, int discs, int length) {
    Pieces pieces = new Pieces(3, 118, 1, 0, 8, 15, discs, 10, .125, 0);
    return StraightCutting.of(grain, new Fabric(40, 1, 1), pieces, new Join(false, 1, 1))
        .attempt(length, 0);
  }

  /** 45 is three times 15; 46 is cut in four of 11 1/2, 14 is not cut. */
  @ParameterizedTest
  @CsvSource({"14,14", "15,15", "45,15", "46,11.5"})
  void lengthwiseStripsThatAreTooLongLieEndToEnd(int length, double strip) {
    StraightTrial trial = trial(Grain.LENGTHWISE, 0, length);
    assertEquals(strip, trial.strip(), 1e-9);
  }

  /** 15 1/2 in two would be under 8, so it stays whole, long as it is; 16 is just twice 8. */
  @ParameterizedTest
  @CsvSource({"31,15.5", "32,8", "33,8.25"})
  void noStripIsDividedUntilItIsTooShort(int halves, double strip) {
    Pieces pieces = new Pieces(3, 118, 1, 0, 8, 15, 0, 10, .125, 0);
    StraightCutting cutting =
        StraightCutting.of(Grain.LENGTHWISE, new Fabric(40, 1, .5), pieces, new Join(false, 1, 1));
    assertEquals(strip, cutting.attempt(halves, 0).strip(), 1e-9);
  }

  /** Thirteen times three, each 15 less a seam; the run takes 117. */
  @Test
  void everyPartOfALongStripLosesASeam() {
    StraightTrial trial = trial(Grain.LENGTHWISE, 0, 45);
    assertEquals(39 * 14 - 117, trial.better().over(), 1e-9);
  }

  /**
   * Two discs of 10 in one line take four strips' width, 40 − 27 = 13 being left beside nine: nine
   * times three of 15, and in the 45 − 20 = 25 behind the discs one of 15 in each of the four and
   * one of 10 before it. Discs are taken as squares there.
   */
  @Test
  void behindDiscsLieAsManyFullStripsAsFitAndAShorterOne() {
    Comb comb = trial(Grain.LENGTHWISE, 2, 45).abreast();
    assertEquals(10, comb.full());
    assertEquals(3, comb.laneCount());
    assertEquals(1, comb.moreLast());
    assertEquals(3 * 9, comb.besideLast(), 1e-9);
    assertEquals(33 * 14 + 27 - 117, comb.over(), 1e-9);
  }

  /** A strip across is as long as the fabric is wide, longer than 15 though it is. */
  @Test
  void crosswiseStripsAreNotDivided() {
    StraightTrial trial = trial(Grain.CROSSWISE, 0, 45);
    assertEquals(40, trial.strip());
  }
}
