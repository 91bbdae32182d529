package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.cutting.ShortStrips;
import frillbook.cutting.ShortStrips.Strip;
import frillbook.plan.JoinsOnPaper.Shown;
import frillbook.rows.Ring;
import frillbook.rows.Rings;
import frillbook.strip.SewingMarks;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What stands side by side on a printed page, and what is looked at while sewing. */
class OnPaperTest {
  private static List<JoinPlace> joins(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(OnPaperTest::join).toList();
  }

  private static JoinPlace join(int n) {
    return Filled.of(
        JoinPlace.class,
        Map.of(
            "joinNo", n, "joinCushion", 1, "joinMark", 5.0 * n, "joinRing", 2, "joinAngle", 90.0));
  }

  private static List<Double> lengths(int count) {
    return IntStream.range(0, count).mapToObj(n -> 50.0 - n).toList();
  }

  /** Thirty rows: the thirty-first join stands beside the first. */
  @Test
  void joinsStandInTwoHalves() {
    List<JoinsOnPaper> rows = JoinsOnPaper.all(joins(32));
    assertEquals(30, rows.size());
    assertEquals(new Shown(1, 1, 5, 2, 90), rows.get(0).left());
    assertEquals(Optional.of(new Shown(31, 1, 155, 2, 90)), rows.get(0).right());
    assertEquals(32, rows.get(1).right().orElseThrow().join());
    assertEquals(Optional.empty(), rows.get(2).right());
    assertEquals(30, rows.get(29).left().join());
  }

  @Test
  void fewJoinsStandInTheFirstHalf() {
    List<JoinsOnPaper> rows = JoinsOnPaper.all(joins(2));
    assertEquals(List.of(1, 2), rows.stream().map(row -> row.left().join()).toList());
    assertEquals(List.of(), JoinsOnPaper.all(List.of()));
  }

  /** Eight strips of 50, 49 … 43: six in the first row, two in the second. */
  @Test
  void shorterStripsStandSixInARow() {
    List<ShortStrips> rows = ShortStrips.all(lengths(8));
    assertEquals(List.of(1, 7), rows.stream().map(ShortStrips::shortNo).toList());
    ShortStrips first = rows.get(0);
    assertEquals(
        List.of(50.0, 49.0, 48.0, 47.0, 46.0, 45.0),
        List.of(first.one(), first.two(), first.three(), first.four(), first.five(), first.six())
            .stream()
            .map(strip -> strip.orElseThrow().shortStrip())
            .toList());
    assertEquals(Optional.of(new Strip(44)), rows.get(1).one());
    assertEquals(Optional.of(new Strip(43)), rows.get(1).two());
    assertEquals(Optional.empty(), rows.get(1).three());
    assertEquals(1, ShortStrips.all(lengths(6)).size());
  }

  /**
   * Of seven rings the fourth; 224 in parts of 12 at most are 19 of 11.789474, on a strip twice as
   * long 23.578947, which begins after half of the 1 for its ends: mark i of n = 1/2 + i × 448 ÷
   * 19; on a base that will be drawn in by a fifth a part is 11.789474 ÷ 0.8 = 14.736842.
   */
  @Test
  void theMarkIsReadAfterHalfTheRings() {
    List<Ring> seven =
        IntStream.rangeClosed(1, 7)
            .mapToObj(n -> Filled.of(Ring.class, Map.of("runningFlat", 80.0 * n)))
            .toList();
    Rings rings =
        Filled.of(Rings.class, Map.of("ringCount", 7, "stitchedLength", 224.0, "rings", seven));
    SewingMarks marks =
        SewingMarks.of(Briefs.inch().with("fullness", 2).with("draw_in", .2).brief(), rings);
    assertEquals(4, marks.halfwayRing());
    assertEquals(320, marks.halfwayMark());
    assertEquals(.5, marks.gatherStart());
    assertEquals(19, marks.parts().gatherParts());
    assertEquals(11.789474, marks.parts().stitchedPart(), 5e-7);
    assertEquals(23.578947, marks.flatPart(), 5e-7);
    assertEquals(14.736842, marks.markedPart(), 5e-7);
  }
}
