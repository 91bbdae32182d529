package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.rows.RingJoins.JoinMark;
import frillbook.rows.RingJoins.JoinsInLine;
import frillbook.rows.RingJoins.Place;
import frillbook.rows.RingsOnPaper.RingOnPaper;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Joins beside the rings they lie in, for rings and joins made up for it. */
class RingJoinsTest {
  private static RingsOnPaper listed(int... rings) {
    return new RingsOnPaper(
        1,
        0,
        List.of(),
        Arrays.stream(rings)
            .mapToObj(ring -> new RingOnPaper(ring, ring, 10.0 * ring, 1))
            .toList());
  }

  /** Every ten to a ring: a join at 25 lies in the third, which ends at 30. */
  private static List<Place> joins(double... marks) {
    return Arrays.stream(marks)
        .mapToObj(mark -> new Place((int) Math.ceil(mark / 10), mark))
        .toList();
  }

  private static JoinsInLine line(int soFar, double... marks) {
    List<JoinMark> blank =
        Collections.nCopies(3 - marks.length, new JoinMark(OptionalDouble.empty()));
    List<JoinMark> shown =
        Arrays.stream(marks).mapToObj(OptionalDouble::of).map(JoinMark::new).toList();
    return new JoinsInLine(
        OptionalDouble.of(soFar), Stream.of(blank, shown).flatMap(List::stream).toList());
  }

  /** Ring 1 none, ring 2 those at 12 and 19, ring 3 the one at 25: three by then. */
  @Test
  void aRingHasItsJoinsFlushRight() {
    RingJoins joins = RingJoins.of(listed(1, 2, 3), joins(12, 19, 25), true);
    assertEquals(List.of(line(0), line(2, 12, 19), line(3, 25)), joins.ringJoins());
    assertEquals(0, joins.joinsUnshown());
  }

  /** Every second ring is listed: rings 3 and 4 together have those at 25, 31 and 38. */
  @Test
  void whereRingsAreLeftOutTheNextLineHasTheirJoins() {
    RingJoins joins = RingJoins.of(listed(2, 4, 5), joins(12, 25, 31, 38), true);
    assertEquals(List.of(line(1, 12), line(4, 25, 31, 38), line(4)), joins.ringJoins());
  }

  /** Six in ring 2: the first three are shown, three are not. */
  @Test
  void aLineHasRoomForTheFirstThree() {
    RingJoins joins = RingJoins.of(listed(1, 2), joins(11, 12, 13, 14, 15, 16), true);
    assertEquals(List.of(line(0), line(6, 11, 12, 13)), joins.ringJoins());
    assertEquals(3, joins.joinsUnshown());
  }

  @Test
  void withoutJoinsEveryLineIsBlank() {
    RingJoins joins = RingJoins.of(listed(1, 2), joins(), true);
    assertEquals(List.of(line(0), line(0)), joins.ringJoins());
    assertEquals(0, joins.joinsUnshown());
  }

  /** The list ends at 25, in ring 3; so of ring 3 and those after it not all are known. */
  @Test
  void whereTheListEndsNoNumberIsSaid() {
    RingJoins joins = RingJoins.of(listed(1, 2, 3, 4), joins(12, 19, 25), false);
    JoinsInLine unknown = new JoinsInLine(OptionalDouble.empty(), line(0).marks());
    assertEquals(List.of(line(0), line(2, 12, 19), unknown, unknown), joins.ringJoins());
    assertEquals(3, joins.joinsKnownTo());
    assertEquals(1, joins.joinsUnshown());
  }
}
