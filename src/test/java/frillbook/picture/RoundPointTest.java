package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two discs with a radius of 1/2, of which one is drawn, at 3 and 2. */
class RoundPointTest {
  private static final List<Spot> CENTRES = List.of(new Spot(3, 2), new Spot(5, 2));

  private final List<RoundPoint> hatched = RoundPoint.hatched(CENTRES, .5, 1);

  private static void assertSpot(double x, double y, Spot spot) {
    assertEquals(x, spot.x(), 1e-9);
    assertEquals(y, spot.y(), 1e-9);
  }

  /** Twenty corners of 18°; after those the hatch, which begins at the fifth and the sixth. */
  @ParameterizedTest
  @CsvSource({
    "0,0", "1,18", "5,90", "10,180", "15,270", "20,360", "21,90", "22,108", "23,-18", "24,-36",
    "31,-90"
  })
  void cornersLieOnceRoundAndThenToAndFro(int row, double degrees) {
    double x = .5 * Math.cos(Math.toRadians(degrees));
    double y = .5 * Math.sin(Math.toRadians(degrees));
    assertSpot(x, y, hatched.get(row).round());
    assertEquals(3 + x, hatched.get(row).discs().get(0).x(), 5.1e-4);
    assertEquals(2 + y, hatched.get(row).discs().get(0).y(), 5.1e-4);
  }

  @Test
  void sixStrokesHaveElevenCornersAndThreeHaveFive() {
    assertEquals(21 + 11, hatched.size());
    assertEquals(21 + 5, RoundPoint.some(CENTRES, .5, 2, disc -> true).size());
  }

  @Test
  void discsThatAreNotDrawnLieInTheCorner() {
    hatched.forEach(point -> assertSpot(0, 0, point.discs().get(1)));
  }

  /** Of two the second is hatched: the first stays where its way round ended. */
  @Test
  void onlySomeAreHatched() {
    List<RoundPoint> some = RoundPoint.some(CENTRES, .5, 2, disc -> disc == 1);
    IntStream.range(21, 26).forEach(row -> assertSpot(3.5, 2, some.get(row).discs().get(0)));
    assertSpot(5, 2.5, some.get(21).discs().get(1));
    assertSpot(3, 2.5, some.get(5).discs().get(0));
  }
}
