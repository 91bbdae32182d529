package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.WorkedOrders;
import frillbook.brief.Brief;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GatherPartsTest {
  private static final Brief SPIRAL = Briefs.inch().brief();

  private static Rings rings(Brief brief) {
    return Rings.of(brief, RowSizes.of(brief.cushion()));
  }

  private static List<Integer> marks(Brief brief, Rings rings) {
    GatherParts parts = GatherParts.of(brief, rings);
    return rings.rings().stream().map(ring -> parts.marksIn(brief, ring)).toList();
  }

  private static Ring ring(double length, double stitched) {
    return Filled.of(Ring.class, Map.of("ringLength", length, "runningStitched", stitched));
  }

  /** By hand: 12 in at most; 36 are three parts of 12, a little more four, 40 four of 10. */
  @ParameterizedTest
  @CsvSource({"1, 1, 1", "12, 1, 12", "36, 3, 12", "36.01, 4, 9.0025", "40, 4, 10"})
  void noPartIsLongerThanCanBePulledUp(double stitched, int count, double part) {
    Rings rings = Filled.of(Rings.class, Map.of("stitchedLength", stitched));
    GatherParts parts = GatherParts.of(SPIRAL, rings);
    assertEquals(count, parts.gatherParts());
    assertEquals(part, parts.stitchedPart(), 1e-9);
  }

  /** By hand: marks at 10, 20, 30 and 40 of a line whose turns end at 10, 24 and 40. */
  @Test
  void aMarkOfTheSpiralIsMetInTheRingItLiesIn() {
    List<Ring> turns = List.of(ring(10, 10), ring(14, 24), ring(16, 40));
    Rings rings = Filled.of(Rings.class, Map.of("stitchedLength", 40.0, "rings", turns));
    assertEquals(List.of(1, 1, 2), marks(SPIRAL, rings));
  }

  /**
   * By hand: 629.167406 cm (computed from the exact spiral) by 30 at most are 20.97, so 21 parts of
   * 29.960353; the last mark is the end.
   */
  @Test
  void everyMarkIsMetOnce() {
    Brief brief = WorkedOrders.washedBias().brief();
    assertEquals(29.960353, GatherParts.of(brief, rings(brief)).stitchedPart(), 5e-7);
    assertEquals(21, marks(brief, rings(brief)).stream().mapToInt(Integer::intValue).sum());
  }

  /**
   * By hand: circles of 1 to 5 in and a lap of 1/2 in are 6.78, 13.07, 19.35, 25.63 and 31.915927
   * in, by 12 at most 1, 2, 2, 3 and 3 parts; a third of the last is 10.638642.
   */
  @Test
  void everySeparateRingHasPartsOfItsOwn() {
    Brief brief = WorkedOrders.ringsAcross().brief();
    assertEquals(List.of(1, 2, 2, 3, 3), marks(brief, rings(brief)));
    assertEquals(3, GatherParts.of(brief, rings(brief)).gatherParts());
    assertEquals(10.638642, GatherParts.of(brief, rings(brief)).stitchedPart(), 5e-7);
  }
}
