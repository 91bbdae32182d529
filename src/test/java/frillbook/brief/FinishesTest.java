package frillbook.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the choices of a maker mean at the sewing machine. */
class FinishesTest {
  /** Once with the wrong sides together, once with the right sides. */
  @ParameterizedTest
  @CsvSource({"PLAIN,1", "FRENCH,2", "OVERLOCKED,1"})
  void onlyAFrenchSeamIsSewnTwice(JoinFinish finish, int passes) {
    assertEquals(passes, finish.passes());
  }

  /** Bias strips end along the grain, at 45° to themselves; straight ones are cut square. */
  @ParameterizedTest
  @CsvSource({
    "BY_GRAIN,CROSSWISE,false",
    "BY_GRAIN,LENGTHWISE,false",
    "BY_GRAIN,BIAS,true",
    "SQUARE,CROSSWISE,false",
    "SQUARE,BIAS,false",
    "DIAGONAL,CROSSWISE,true",
    "DIAGONAL,LENGTHWISE,true",
    "DIAGONAL,BIAS,true"
  })
  void seamsFollowTheGrainUnlessTheMakerSaysOtherwise(JoinLine line, Grain grain, boolean slants) {
    assertEquals(slants, line.isDiagonal(grain));
  }

  @Test
  void onlyAZippedBackHasAZip() {
    assertTrue(BackStyle.ZIPPED_HALVES.hasZip());
    assertFalse(BackStyle.ONE_DISC.hasZip());
    assertFalse(BackStyle.OVERLAPPING.hasZip());
  }

  /** One along either edge of the zip, or a hem on either piece. */
  @ParameterizedTest
  @CsvSource({"ONE_DISC,1,0", "ZIPPED_HALVES,2,2", "OVERLAPPING,2,2"})
  void aBackInTwoPiecesIsSewnAlongBothOfThem(BackStyle style, int pieces, int seams) {
    assertEquals(pieces, style.pieces());
    assertEquals(seams, style.seams());
  }

  @ParameterizedTest
  @CsvSource({
    "RAW,false",
    "PINKED,false",
    "NARROW_HEM,true",
    "OVERLOCKED,true",
    "ROLLED,true",
    "FOLDED,false"
  })
  void rawPinkedAndFoldedEdgesTakeNoThread(EdgeFinish finish, boolean sewn) {
    assertEquals(sewn, finish.isSewn());
  }

  @ParameterizedTest
  @CsvSource({"NONE,0", "BASE,1", "BASE_AND_BACK,2"})
  void interfacingIsCutForEveryDiscItBacks(Interfaced interfaced, int discs) {
    assertEquals(discs, interfaced.discs());
  }
}
