package frillbook.bias;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bias strips 1 wide beside a disc of 10 pushed into a corner; worked by hand.
 *
 * <p>The disc's centre lies at 5√2 from the corner, its rim reaches 5 further, and so the inner
 * lines of the strips pass the centre at 4, 3, 2, 1 and 0. Half chords there are 3, 4, √21, √24 and
 * 5. A line as far from the corner as it is long on either side is cut by the disc in the middle.
 */
class BesideDiscTest {
  private static final double CENTRE = 5 * Math.sqrt(2);

  private static final double ROOT2 = Math.sqrt(2);

  private static final Join SQUARE = new Join(false, .5, 1);

  private static final Join SLANTED = new Join(true, .5, 1);

  private static BesideDisc strip(int number, Join join) {
    return BesideDisc.all(new Pieces(1, 500, 0, 4, 1, 10, .125), join).get(number - 1);
  }

  /** The rim's line meets the edges at √2 (5√2 + 5) = 10 + 5√2, every further one √2 nearer. */
  @Test
  void cutLinesBeginAtTheRim() {
    assertEquals(10 + 5 * ROOT2, strip(1, SQUARE).besideLine(), 1e-9);
    assertEquals(10 + 3 * ROOT2, strip(3, SQUARE).besideLine(), 1e-9);
    assertEquals(CENTRE + 4, strip(1, SQUARE).besideInner(), 1e-9);
    assertEquals(CENTRE + 2, strip(3, SQUARE).besideInner(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"1,4,9", "2,3,16", "3,2,21", "4,1,24", "5,0,25"})
  void aPieceIsItsLineLessHalfTheChord(int number, double past, double squaredHalfChord) {
    double expected = CENTRE + past - Math.sqrt(squaredHalfChord);
    assertEquals(expected, strip(number, SQUARE).besideRight(), 1e-8);
    assertEquals(expected, strip(number, SQUARE).besideLeft(), 1e-8);
    assertEquals(expected, strip(number, SLANTED).besideRight(), 1e-8);
  }

  /**
   * A slanting end touches the rim where the rim itself runs at 45° to the strip, 5/√2 past the
   * centre: so the second strip, between 3 and 4. The first, between 4 and 5, touches with its
   * inner side; the others, nearer to the centre, with their outer side: the third between 2 and 3
   * at 3, where half the chord is 4.
   */
  @Test
  void aSlantingEndClearsTheRimAllTheWay() {
    assertEquals(CENTRE + 4, strip(1, SLANTED).besideClosest(), 1e-9);
    assertEquals(CENTRE + 4 - 3, strip(1, SLANTED).besideLeft(), 1e-8);
    assertEquals(CENTRE + 5 / ROOT2, strip(2, SLANTED).besideClosest(), 1e-9);
    assertEquals(2 * (CENTRE + 3) - (CENTRE + 10 / ROOT2), strip(2, SLANTED).besideLeft(), 1e-8);
    assertEquals(CENTRE + 3, strip(3, SLANTED).besideClosest(), 1e-9);
    assertEquals(CENTRE + 2 - 1 - 4, strip(3, SLANTED).besideLeft(), 1e-8);
    assertEquals(CENTRE + 1 - 1 - Math.sqrt(21), strip(4, SLANTED).besideLeft(), 1e-8);
  }

  /** The inner line of the fifth runs through the centre itself. */
  @Test
  void stripsPastTheCentreAreNotCutInTwo() {
    List<BesideDisc> all = BesideDisc.all(new Pieces(1, 500, 0, 4, 1, 10, .125), SQUARE);
    assertEquals(6, all.size());
    assertEquals(6, all.get(5).besideNo());
    assertTrue(all.get(4).besideOk());
    assertFalse(all.get(5).besideOk());
  }

  private static double net(int number, double least, double shorter, double slack) {
    Pieces pieces = new Pieces(1, 500, 0, least, 1, 10, .125);
    List<BesideDisc> alone = List.of(strip(number, SLANTED));
    Fabric fabric = new Fabric(20, 1, 5);
    BiasSetting setting = BiasSetting.of(fabric, pieces, SLANTED);
    var cutting = new BiasCutting(fabric, pieces, SLANTED, setting, alone, List.of());
    return BesidePieces.of(cutting, shorter, cutting.least(), slack, true).both();
  }

  /** The second strip's pieces are 5√2 − 1 = 6.0711 and 6; its line meets the edges at 15.6569. */
  @Test
  void bothPiecesAddWhatTheirSeamsLeave() {
    assertEquals(CENTRE - 1 + 6 - 2 * .5, net(2, 4, 20, 0), 1e-8);
  }

  /** A disc pushed √2 along the edges' sum lengthens each piece by 1. */
  @Test
  void aDiscPushedOutOfItsCornerLengthensBothPieces() {
    assertEquals(CENTRE + 7 - 2 * .5, net(2, 4, 20, ROOT2), 1e-8);
  }

  /** 15.6569 + √2 = 17.0711. */
  @ParameterizedTest
  @CsvSource({"15.66,0,true", "15.65,0,false", "17.08,1.414213562,true", "17.07,1.414213562,false"})
  void theLineMustMeetBothEdges(double shorter, double slack, boolean counts) {
    assertEquals(counts, net(2, 4, shorter, slack) > 0);
    assertEquals(counts, strip(2, SLANTED).piece(6, 4, shorter, slack) > 0);
  }

  /** The line may end in the very corner, 10 + 4√2 from the other. */
  @Test
  void aLineIntoTheCornerMeetsBothEdges() {
    assertTrue(net(2, 4, 10 + 4 * ROOT2 - 5e-7, 0) > 0);
    assertTrue(strip(2, SLANTED).piece(6, 4, 10 + 4 * ROOT2 - 5e-7, 0) > 0);
  }

  /** Of 6.0711 and 6 both, one and none are as long as 6, 6.01 and 6.1; pushed out all are. */
  @Test
  void aPieceTooShortToJoinAddsNothing() {
    assertEquals(CENTRE + 5 - 1, net(2, 6, 20, 0), 1e-8);
    assertEquals(CENTRE - 1.5, net(2, 6.01, 20, 0), 1e-8);
    assertEquals(0, net(2, 6.1, 20, 0));
    assertEquals(CENTRE + 7 - 1, net(2, 6.1, 20, ROOT2), 1e-8);
  }

  @Test
  void pastTheCentreNothingIsAdded() {
    assertEquals(0, net(6, 1, 100, 20));
    assertEquals(0, strip(6, SLANTED).piece(6, 1, 100, 20));
  }

  /** 6 + √2 ÷ √2 = 7. */
  @ParameterizedTest
  @CsvSource({"6,0,6", "6.0000005,0,6", "6.01,0,0", "7,1.4142135624,7", "7.01,1.4142135624,0"})
  void aPieceIsCutWhereItIsLongEnough(double least, double slack, double expected) {
    assertEquals(expected, strip(2, SLANTED).piece(6, least, 20, slack), 1e-9);
  }
}
