package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.WorkedOrders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fabric of {@link WorkedOrders#washedBias} by hand: 270 × 144 cm, the strips from 182 of them.
 * Twice 144 is more than 270, so 144 is the height of the picture.
 */
class BiasFabricByHandTest {
  private FabricPicture picture;

  @BeforeEach
  void drawTheFabric() {
    picture = Drawn.of(WorkedOrders.washedBias()).orElseThrow().fabric();
  }

  /** Slanting ends begin a strip's width further along on its other side. */
  @Test
  void theStripsLieAlongTheFabricWithSlantingEnds() {
    assertEquals(270, picture.fabricLength(), 1e-9);
    assertEquals(144, picture.fabricScale(), 1e-9);
    assertEquals(0, picture.fabricTurn());
    assertEquals(5, picture.fabricShift());
  }

  /** The shortest of the 19 is 116.03; the other 18 are longer. */
  @Test
  void oneOfTheShorterStripsIsTheShortest() {
    assertEquals(18, picture.oddSure());
    assertEquals(1, picture.oddTies());
  }

  /** 200 and pairs of 125 … 195 in the near corner; 201.03 and 116.03 … 196.03 in the far one. */
  @Test
  void nineStripsComeFromOneCornerAndTenFromTheOther() {
    assertEquals(new FabricSide(1, 1, 1, 1), picture.fabricSides().get(FabricSide.NEAR_LANE));
    assertEquals(new FabricSide(1, 1, 1, 1), picture.fabricSides().get(FabricSide.FAR_LANE));
    assertEquals(new FabricSide(8, 8, 1, 8), picture.fabricSides().get(FabricSide.NEAR_PAIR));
    assertEquals(new FabricSide(8, 9, 1, 9), picture.fabricSides().get(FabricSide.FAR_PAIR));
    assertEquals(new FabricSide(0, 0, 1, 0), picture.fabricSides().get(FabricSide.NEAR_RIGHT));
    assertEquals(new FabricSide(0, 0, 1, 0), picture.fabricSides().get(FabricSide.FAR_LEFT));
  }

  /**
   * Ten of the 19 strips in the near corner stay over. So the first line is 20 ÷ √2 + 10 × 5√2 =
   * 84.852814 from the corner, the last 23 strips on, 247.487373; half a strip is 3.535534.
   */
  @Test
  void theLinesBeginWhereTheFirstStripIsCut() {
    CutLines lines = picture.cutLines();
    assertEquals(10, lines.fabricFirst());
    assertEquals(23, lines.fabricComb());
    assertEquals(1, lines.fabricEvery());
    assertEquals(84.852814 / 144, lines.fabricFrom(), 1e-8);
    assertEquals(3.535534 / 144, lines.fabricStep(), 1e-8);
    assertEquals(247.487373 / 144, lines.fabricLast(), 1e-8);
  }

  /**
   * Up the first line, on to the second, 91.923882, down it. The last meets the far edges, 182 and
   * 144, at 65.487373 across and 103.487373 along, and the pen stays there.
   */
  @ParameterizedTest
  @CsvSource({
    "0, .589, 0",
    "1, 0, .589",
    "2, 0, .638",
    "3, .638, 0",
    "44, 1.264, .406",
    "47, 1.264, .455",
    "48, 1.264, .455",
    "49, .719, 1",
    "126, .719, 1",
    "127, 1.264, .455"
  })
  void thePenGoesToAndFro(int point, double x, double y) {
    CutLines.CutPoint at = picture.cutLines().fabricCuts().get(point);
    assertEquals(x, at.fabricCutX(), 1e-9);
    assertEquals(y, at.fabricCutY(), 1e-9);
  }

  /**
   * Round 1.875 × 1, on to where the strips end, 182 ÷ 144, and beside each selvage, 12 thousandths
   * of the picture's height from it.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "1, 1.875, 0",
    "2, 1.875, 1",
    "3, 0, 1",
    "4, 0, 0",
    "5, 1.264, 0",
    "6, 1.264, 1",
    "7, 1.875, 1",
    "8, 1.875, .988",
    "9, 0, .988",
    "10, 0, .012",
    "11, 1.875, .012"
  })
  void theBandsBeginWhereTheStripsEnd(int corner, double x, double y) {
    FabricPicture.FabricEdgePoint at = picture.fabricEdges().get(corner);
    assertEquals(x, at.fabricEdgeX(), 1e-9);
    assertEquals(y, at.fabricEdgeY(), 1e-9);
  }

  /** Two bands of three, 22 to the first centre and 44 from each to the next. */
  @ParameterizedTest
  @CsvSource({"0, 204, 22", "1, 204, 66", "2, 204, 110", "3, 248, 22", "5, 248, 110"})
  void overlaysLieInBandsAtTheEnd(int disc, double along, double across) {
    FabricDisc placed = picture.fabricDiscs().get(disc);
    assertEquals(along, placed.fabricDiscRun(), 1e-9);
    assertEquals(across, placed.fabricDiscStack(), 1e-9);
    assertEquals(along / 144, placed.fabricDiscX(), 1e-9);
    assertEquals(across / 144, placed.fabricDiscY(), 1e-9);
  }

  @Test
  void allSixAreDrawn() {
    assertEquals(6, picture.fabricDiscsDrawn());
    assertEquals(22 / 144.0, picture.fabricDiscRadius(), 1e-9);
    assertEquals(0, picture.fabricLeft());
    assertEquals(new FabricDisc(0, 0, 0, 0), picture.fabricDiscs().get(6));
  }
}
