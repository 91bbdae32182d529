package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The base fabric of {@link WorkedOrders#washedBias} by hand: 180 × 94.08 cm after washing. A third
 * of 180 is less than 94.08, so that is the height of the picture. Two bases of 44 in a row, one in
 * the next with a half back of 42 × 22.5 beside it, then half backs by two.
 */
class BaseFabricByHandTest {
  private BasePicture picture;

  @BeforeEach
  void drawTheFabric() {
    picture = Drawn.of(WorkedOrders.washedBias()).orElseThrow().base();
  }

  private static void assertAt(double along, double across, Spot spot) {
    assertEquals(along / 94.08, spot.x(), 5.1e-4, spot::toString);
    assertEquals(across / 94.08, spot.y(), 5.1e-4, spot::toString);
  }

  @Test
  void theEdgeIsTheWashedFabric() {
    assertEquals(180, picture.baseUsableLength(), 1e-9);
    assertEquals(94.08, picture.baseFabricScale(), 1e-9);
    assertEquals(9, picture.baseEdges().size());
    assertAt(0, 0, picture.baseEdges().get(0));
    assertAt(180, 0, picture.baseEdges().get(1));
    assertAt(180, 94.08, picture.baseEdges().get(2));
    assertAt(0, 94.08, picture.baseEdges().get(3));
    assertAt(0, 0, picture.baseEdges().get(4));
  }

  /** Twelve thousandths of the picture's height beside each selvage. */
  @Test
  void theSelvagesAreMarked() {
    assertEquals(new Spot(0, .012), picture.baseEdges().get(5));
    assertEquals(.012, picture.baseEdges().get(6).y());
    assertEquals(.988, picture.baseEdges().get(7).y());
    assertEquals(new Spot(0, .988), picture.baseEdges().get(8));
  }

  /** Of 15 bases and 30 halves twelve each are drawn. */
  @Test
  void twelveOfEachAreDrawnAtMost() {
    Briefs many = Briefs.inch().with("quantity", 15).with("back_style", "zipped_halves");
    BasePicture some = Drawn.of(many).orElseThrow().base();
    assertEquals(12, some.baseDiscsDrawn());
    assertEquals(3, some.baseDiscsLeft());
    assertEquals(12, some.baseBacksDrawn());
    assertEquals(18, some.baseBacksLeft());
    assertEquals(21, some.basePiecesLeft());
  }

  @Test
  void threeBasesAndSixHalvesAreDrawn() {
    assertEquals(3, picture.baseDiscsDrawn());
    assertEquals(0, picture.baseDiscsLeft());
    assertEquals(6, picture.baseBacksDrawn());
    assertEquals(0, picture.baseBacksLeft());
    assertEquals(44, picture.baseLastWidth(), 1e-9);
    assertEquals(1, picture.backDeep());
  }

  @ParameterizedTest
  @CsvSource({"0, 22, 22", "1, 22, 66", "2, 66, 22"})
  void basesLieInRowsOfTwo(int base, double along, double across) {
    assertAt(along, across, picture.baseDiscs().get(base));
  }

  /**
   * A stroke at 45° from the first corner goes to the sixth: of a matching disc, and there is none.
   */
  @Test
  void aBaseIsNotHatched() {
    for (int row = 21; row < 26; row++) {
      RoundPoint point = picture.baseDiscPoints().get(row);
      assertEquals(picture.baseDiscPoints().get(0).discs(), point.discs());
    }
  }

  /** A disc of 20 corners, the first to the right of its centre, the sixth above it. */
  @ParameterizedTest
  @CsvSource({"0, 22, 0", "5, 0, 22", "10, -22, 0", "15, 0, -22", "20, 22, 0"})
  void aBaseIsDrawnRound(int corner, double along, double across) {
    assertEquals(26, picture.baseDiscPoints().size());
    assertEquals(22 / 94.08, picture.baseDiscRadius(), 1e-9);
    RoundPoint point = picture.baseDiscPoints().get(corner);
    assertAt(along, across, point.round());
    assertAt(22 + along, 22 + across, point.discs().get(0));
    assertAt(22 + along, 66 + across, point.discs().get(1));
    assertAt(66 + along, 22 + across, point.discs().get(2));
    assertAt(0, 0, point.discs().get(3));
    assertAt(0, 0, point.discs().get(11));
  }

  /** The first beside the last base, at 44 from both edges; the others from 88 on. */
  @ParameterizedTest
  @CsvSource({"0, 44, 44", "1, 88, 0", "2, 88, 42", "3, 110.5, 0", "4, 110.5, 42", "5, 133, 0"})
  void halvesOfBacksLieByTwo(int half, double along, double across) {
    assertAt(along, across, picture.baseBacks().get(half));
  }

  /** 22.5 along the selvage and 42 across. */
  @ParameterizedTest
  @CsvSource({"0, 0, 0", "1, 22.5, 0", "2, 22.5, 42", "3, 0, 42", "4, 0, 0"})
  void aHalfIsDrawnAsItsRectangle(int corner, double along, double across) {
    assertEquals(5, picture.backPoints().size());
    BasePicture.BackPoint point = picture.backPoints().get(corner);
    assertAt(along, across, point.side());
    assertAt(44 + along, 44 + across, point.backs().get(0));
    assertAt(110.5 + along, 42 + across, point.backs().get(4));
    assertAt(0, 0, point.backs().get(6));
  }
}
