package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.WorkedOrders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The cloth of {@link WorkedOrders#washedBias} by hand: 270 × 144 cm, the strips from 182 of them.
 * Twice 144 is more than 270, so 144 is the height of the picture.
 */
class BiasClothByHandTest {
  private ClothPicture picture;

  @BeforeEach
  void drawTheCloth() {
    picture = Drawn.of(WorkedOrders.washedBias()).orElseThrow().cloth();
  }

  /** Slanting ends begin a strip's width further along on its other side. */
  @Test
  void theStripsLieAlongTheClothWithSlantingEnds() {
    assertEquals(270, picture.clothLength(), 1e-9);
    assertEquals(144, picture.clothScale(), 1e-9);
    assertEquals(0, picture.clothTurn());
    assertEquals(5, picture.clothShift());
  }

  /** The shortest of the 20 is 110; the other 19 are longer. */
  @Test
  void oneOfTheShorterStripsIsTheShortest() {
    assertEquals(19, picture.oddSure());
    assertEquals(1, picture.oddTies());
  }

  /** 120 … 200 and the 110 itself in the near corner; 111.03 … 201.03 in the far one. */
  @Test
  void tenStripsComeFromEitherCorner() {
    assertEquals(new ClothSide(9, 10, 1, 10), picture.clothSides().get(ClothSide.NEAR_LANE));
    assertEquals(new ClothSide(10, 10, 0, 10), picture.clothSides().get(ClothSide.FAR_LANE));
    assertEquals(new ClothSide(0, 0, 0, 0), picture.clothSides().get(ClothSide.NEAR_RIGHT));
    assertEquals(new ClothSide(0, 0, 0, 0), picture.clothSides().get(ClothSide.FAR_LEFT));
  }

  /**
   * Nine of the 19 strips in the near corner stay over. So the first line is 20 ÷ √2 + 9 × 5√2 =
   * 77.781746 from the corner, the last 24 strips on, 247.487373; half a strip is 3.535534.
   */
  @Test
  void theLinesBeginWhereTheFirstStripIsCut() {
    CutLines lines = picture.cutLines();
    assertEquals(9, lines.clothFirst());
    assertEquals(24, lines.clothComb());
    assertEquals(1, lines.clothEvery());
    assertEquals(77.781746 / 144, lines.clothFrom(), 1e-8);
    assertEquals(3.535534 / 144, lines.clothStep(), 1e-8);
    assertEquals(247.487373 / 144, lines.clothLast(), 1e-8);
  }

  /**
   * Up the first line, on to the second, 84.852814, down it. The last meets the far edges, 182 and
   * 144, at 65.487373 across and 103.487373 along, and the pen stays there.
   */
  @ParameterizedTest
  @CsvSource({
    "0, .540, 0",
    "1, 0, .540",
    "2, 0, .589",
    "3, .589, 0",
    "47, 1.264, .406",
    "48, 1.264, .455",
    "49, .719, 1",
    "198, .719, 1",
    "199, 1.264, .455"
  })
  void thePenGoesToAndFro(int point, double x, double y) {
    CutLines.CutPoint at = picture.cutLines().clothCuts().get(point);
    assertEquals(x, at.clothCutX(), 1e-9);
    assertEquals(y, at.clothCutY(), 1e-9);
  }

  /** Round 1.875 × 1, and on to where the strips end, 182 ÷ 144. */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "1, 1.875, 0",
    "2, 1.875, 1",
    "3, 0, 1",
    "4, 0, 0",
    "5, 1.264, 0",
    "6, 1.264, 1"
  })
  void theBandsBeginWhereTheStripsEnd(int corner, double x, double y) {
    ClothPicture.ClothEdgePoint at = picture.clothEdges().get(corner);
    assertEquals(x, at.clothEdgeX(), 1e-9);
    assertEquals(y, at.clothEdgeY(), 1e-9);
  }

  /** Two bands of three, 22 to the first centre and 44 from each to the next. */
  @ParameterizedTest
  @CsvSource({"0, 204, 22", "1, 204, 66", "2, 204, 110", "3, 248, 22", "5, 248, 110"})
  void overlaysLieInBandsAtTheEnd(int disc, double along, double across) {
    ClothDisc placed = picture.clothDiscs().get(disc);
    assertEquals(along, placed.clothDiscRun(), 1e-9);
    assertEquals(across, placed.clothDiscStack(), 1e-9);
    assertEquals(along / 144, placed.clothDiscX(), 1e-9);
    assertEquals(across / 144, placed.clothDiscY(), 1e-9);
  }

  @Test
  void allSixAreDrawn() {
    assertEquals(6, picture.clothDiscsDrawn());
    assertEquals(22 / 144.0, picture.clothDiscRadius(), 1e-9);
    assertEquals(0, picture.clothLeft());
    assertEquals(new ClothDisc(0, 0, 0, 0), picture.clothDiscs().get(6));
  }
}
