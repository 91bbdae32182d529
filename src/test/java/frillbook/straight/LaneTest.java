package frillbook.straight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.cutting.Pieces;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LaneTest {
  /** The right-angled triangle 3, 4, 5. */
  @ParameterizedTest
  @CsvSource({"5,3,4", "5,4,3", "5,0,5", "5,5,0", "5,6,0"})
  void halfAChordFollowsPythagoras(double radius, double offset, double half) {
    assertEquals(half, Lane.halfChord(radius, offset), 1e-12);
  }

  /** 0.1 + 0.2 is a hair more than 0.3 in binary, 0.7 − 0.4 a hair less. */
  @Test
  void aLaneThatJustTouchesTheRimLosesNothing() {
    assertEquals(0, Lane.halfChord(.3, .1 + .2));
    assertEquals(0, Lane.halfChord(.3, .7 - .4));
    assertEquals(0, Lane.halfChord(.1 + .2, .3));
  }

  /**
   * By hand: strips 2 wide past discs of 10, whose centres lie 5 and 15 from the last full strip.
   * The first lane reaches from 0 to 2, 3 short of the first centres; the third, from 4 to 6, runs
   * over them; the fifth is as far from them as the first, and the sixth as far from the next.
   */
  @Test
  void lanesKeepTheirDistanceFromTheNearestCentres() {
    List<Lane> lanes = Lane.beside(new Pieces(2, 500, 0, 12, 3, 10, .125), 40);
    assertEquals(
        List.of(3.0, 1.0, 0.0, 1.0, 3.0, 3.0, 1.0, 0.0),
        lanes.stream().limit(8).map(Lane::laneOffset).toList());
    assertEquals(4, lanes.get(0).laneHalfChord(), 1e-12);
    assertEquals(Math.sqrt(24), lanes.get(1).laneHalfChord(), 1e-9);
    assertEquals(5, lanes.get(2).laneHalfChord(), 1e-12);
  }

  @Test
  void lanesAreNumberedFromOneToThirtyTwo() {
    List<Lane> lanes = Lane.beside(new Pieces(2, 500, 0, 12, 3, 10, .125), 40);
    assertEquals(32, lanes.size());
    assertEquals(1, lanes.get(0).laneNo());
    assertEquals(32, lanes.get(31).laneNo());
  }
}
