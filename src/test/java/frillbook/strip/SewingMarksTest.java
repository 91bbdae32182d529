package frillbook.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.brief.Brief;
import frillbook.rows.Ring;
import frillbook.rows.Rings;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class SewingMarksTest {
  private static final Brief BRIEF = Briefs.inch().brief();

  /** A line of 36 in whose strip mark at the end of each ring is one of {@code marks}. */
  private static SewingMarks marks(double... marks) {
    List<Ring> rings =
        DoubleStream.of(marks)
            .mapToObj(mark -> Filled.of(Ring.class, Map.of("runningFlat", mark)))
            .toList();
    return SewingMarks.of(
        BRIEF,
        Filled.of(
            Rings.class,
            Map.of("ringCount", rings.size(), "rings", rings, "stitchedLength", 36.0)));
  }

  /** By hand: half of 3 rings is the second, half of 4 too, half of 1 the only one. */
  @Test
  void theMarkIsReadAfterHalfTheRings() {
    assertEquals(2, marks(10, 25, 90).halfwayRing());
    assertEquals(25, marks(10, 25, 90).halfwayMark());
    assertEquals(2, marks(10, 25, 60, 90).halfwayRing());
    assertEquals(25, marks(10, 25, 60, 90).halfwayMark());
    assertEquals(1, marks(90).halfwayRing());
    assertEquals(90, marks(90).halfwayMark());
  }

  /**
   * By hand: 36 in sewn are three parts of 12, each of 30 in of strip, two and a half times full;
   * on the base, which sewing draws in by 4 %, they are marked 12 ÷ 0.96 = 12.5 apart. Half the
   * inch for the ends comes before the first.
   */
  @Test
  void partsAreMarkedOnTheStripAndOnTheBase() {
    SewingMarks marks = marks(90);
    assertEquals(3, marks.parts().gatherParts());
    assertEquals(.5, marks.gatherStart());
    assertEquals(30, marks.flatPart(), 1e-9);
    assertEquals(12.5, marks.markedPart(), 1e-8);
  }
}
