package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Strips across fabric 53 in wide, 2 1/4 in each, beside one matching disc of 19 7/8 in; by hand.
 *
 * <p>301.7616 in of rows (computed from the exact spiral) × 2.4 and 1 are 725.228; joins of 1 1/4
 * in leave 723.978 to cut. 40 1/2 in hold nine full strips before the matching disc, 9 × 51 3/4,
 * and nine lanes beside it. The one whose middle is m from the matching disc's edge keeps 43 1/16 −
 * √(9.9375² − a²), a = |m − 9.9375| − 1.125, or 0: 36.7652, 34.7446, 33.6501, 33.1693, 33.1250,
 * 33.2121, 33.7855, 35.0022, 37.2530. Less a join each they add 299.457, without the fifth 267.582,
 * and without the fourth besides only 235.663; wanted are 723.978 − 465.75 = 258.228.
 */
class LanesByHandTest {
  private FabricPicture picture;

  @BeforeEach
  void drawTheFabric() {
    picture = Drawn.of(Briefs.inch().with("fullness", 2.4)).orElseThrow().fabric();
  }

  @ParameterizedTest
  @CsvSource({
    "1, 36.7652",
    "2, 34.7446",
    "3, 33.6501",
    "4, 33.1693",
    "5, 0",
    "6, 33.2121",
    "7, 33.7855",
    "8, 35.0022",
    "9, 37.2530",
    "10, 0"
  })
  void everyLaneButTheShortestIsCut(int lane, double length) {
    assertEquals(length, picture.near().besideRows().get(lane - 1).besidePiece(), 1e-4);
  }

  /** Lanes follow the nine full strips, and end at the far selvage. */
  @Test
  void aLaneEndsAtTheSelvage() {
    BesideStrips.BesideStrip second = picture.near().besideRows().get(1);
    assertEquals(20.25, picture.near().besideFrom(), 1e-9);
    assertEquals(22.5, second.besideDepth(), 1e-9);
    assertEquals(18.2554, second.besideStart(), 1e-4);
    assertEquals(53, second.runs().corner(0), 1e-9);
    assertEquals(18.2554, second.runs().corner(1), 1e-4);
    assertEquals(18.2554, second.runs().corner(2), 1e-4);
    assertEquals(53, second.runs().corner(3), 1e-9);
    assertEquals(List.of(22.5, 24.75), List.of(second.deeps().one(), second.deeps().two()));
  }

  /** Strips across lie upwards in the picture, which is as high as the fabric is wide. */
  @Test
  void itsCornersAreToScale() {
    BesideStrips.BesidePoint second = picture.near().besidePoints().get(4 + 1);
    assertEquals(.425, second.besideX(), 1e-9);
    assertEquals(.344, second.besideY(), 1e-9);
  }

  @Test
  void allOfThemAreDrawnAtOnce() {
    assertEquals(9, picture.near().besideStrips());
    assertEquals(8, picture.near().cut());
    assertEquals(0, picture.far().besideStrips());
    assertEquals(0, picture.far().cut());
    assertEquals(0, picture.fabricLeft());
    assertEquals(0, picture.fabricShift());
    assertEquals(1, picture.fabricTurn());
  }

  /** Seven are longer than the 33.1693 of the fourth. */
  @Test
  void theShortestThatIsCutIsTheOnlyOneOfItsLength() {
    assertEquals(7, picture.oddSure());
    assertEquals(1, picture.oddTies());
    assertEquals(1, picture.near().ties());
  }

  /** It touches the first selvage and the last full strip. */
  @Test
  void theMatchingDiscLiesBehindTheFullStrips() {
    FabricDisc matchingDisc = picture.fabricDiscs().get(0);
    assertEquals(9.9375, matchingDisc.fabricDiscRun(), 1e-9);
    assertEquals(30.1875, matchingDisc.fabricDiscStack(), 1e-9);
    assertEquals(30.1875 / 53, matchingDisc.fabricDiscX(), 1e-9);
    assertEquals(9.9375 / 53, matchingDisc.fabricDiscY(), 1e-9);
  }

  /** Ten lines 2 1/4 in apart, up and down. */
  @Test
  void theLinesOfTheFullStripsGoToAndFro() {
    CutLines lines = picture.cutLines();
    assertEquals(9, lines.fabricComb());
    assertEquals(0, lines.fabricFrom());
    assertEquals(20.25 / 53, lines.fabricLast(), 1e-9);
    assertEquals(0, lines.fabricCuts().get(0).fabricCutX());
    assertEquals(1, lines.fabricCuts().get(0).fabricCutY());
    assertEquals(0, lines.fabricCuts().get(1).fabricCutY());
    assertEquals(.042, lines.fabricCuts().get(2).fabricCutX(), 1e-9);
    assertEquals(0, lines.fabricCuts().get(2).fabricCutY());
    assertEquals(1, lines.fabricCuts().get(3).fabricCutY());
    assertEquals(.382, lines.fabricCuts().get(127).fabricCutX(), 1e-9);
  }

  /**
   * 1 1/8 in beside the first line, 6 thousandths of the picture's height short of the edge; the
   * ninth strip lies between .340 and .382, and there the tint stays.
   */
  @Test
  void theTintGoesDownTheMiddlesToAndFro() {
    List<CutLines.CutPoint> lines = picture.cutLines().fabricCuts();
    assertEquals(new Spot(.021, .994), lines.get(0).fabricTint());
    assertEquals(new Spot(.021, .006), lines.get(1).fabricTint());
    assertEquals(.361, lines.get(16).fabricTint().x(), 1e-9);
    assertEquals(.361, lines.get(17).fabricTint().x(), 1e-9);
    assertEquals(lines.get(17).fabricTint(), lines.get(127).fabricTint());
  }

  /** There and back, from the edge at 1 to the matching disc. */
  @Test
  void theTintOfAShorterStripEndsWithIt() {
    List<BesideStrips.BesidePoint> second = picture.near().besidePoints().subList(4, 8);
    // Between .425 and .467, 24.75 ÷ 53.
    assertEquals(new Spot(.446, .994), second.get(0).tint());
    assertEquals(new Spot(.446, .344), second.get(1).tint());
    assertEquals(second.get(1).tint(), second.get(2).tint());
    assertEquals(second.get(0).tint(), second.get(3).tint());
  }
}
