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
import frillbook.strip.StripLength;
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
   * Of seven rings the fourth; an eighth of 560 is 70, of 224 it is 28, on a base that will be
   * drawn in by a fifth 35.
   */
  @Test
  void theMarkIsReadAfterHalfTheRings() {
    List<Ring> seven =
        IntStream.rangeClosed(1, 7)
            .mapToObj(n -> Filled.of(Ring.class, Map.of("runningFlat", 80.0 * n)))
            .toList();
    Rings rings =
        Filled.of(Rings.class, Map.of("ringCount", 7, "stitchedLength", 224.0, "rings", seven));
    assertEquals(
        new SewingMarks(4, 320, 70, 35),
        SewingMarks.of(
            Briefs.inch().with("draw_in", .2).brief(), rings, new StripLength(560, 560, 560)));
  }
}
