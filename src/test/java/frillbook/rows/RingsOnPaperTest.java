package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.rows.RingsOnPaper.RingOnPaper;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A page has room for thirty-six rings. */
class RingsOnPaperTest {
  private static RingsOnPaper of(int count) {
    List<Ring> rings = IntStream.rangeClosed(1, count).mapToObj(RingsOnPaperTest::ring).toList();
    return RingsOnPaper.of(
        Briefs.inch()
            .with("gather_section", 1)
            .with("fullness", 2.4)
            .with("frill_height", 3.5)
            .brief(),
        Filled.of(
            Rings.class,
            Map.of("ringCount", count, "stitchedLength", 2.0 * count, "rings", rings)));
  }

  private static Ring ring(int n) {
    return Filled.of(
        Ring.class,
        Map.of(
            "ringNo",
            n,
            "ringRadius",
            n + .5,
            "markedRadius",
            n + .75,
            "ringLength",
            1.0 * n,
            "runningStitched",
            2.0 * n,
            "runningFlat",
            3.0 * n));
  }

  private static List<Integer> numbers(int count) {
    return of(count).ringsOnPaper().stream().map(RingOnPaper::paperRing).toList();
  }

  /** Pulled up inch by inch; the second ends at 4 and is 2 long. The edge: 2.4 × 2.5 ÷ 6 = 1. */
  @Test
  void aRingOnPaperHasTheFiguresOfTheRing() {
    RingOnPaper second = of(3).ringsOnPaper().get(1);
    assertEquals(2, second.paperRing());
    assertEquals(2.75, second.paperMarked());
    assertEquals(2, second.paperLength());
    assertEquals(4, second.paperStitched());
    assertEquals(6, second.paperMark());
    assertEquals(2, second.paperMarks());
    assertEquals(1, second.paperEdgeFullness(), 1e-15);
  }

  @Test
  void asManyAsThePageHoldsAreAllListed() {
    assertEquals(1, of(36).ringEvery());
    assertEquals(IntStream.rangeClosed(1, 36).boxed().toList(), numbers(36));
  }

  /** 37 of them: 2, 4 … 36 and the last. */
  @Test
  void ofMoreEverySecondIsListedAndTheLast() {
    assertEquals(2, of(37).ringEvery());
    assertEquals(19, numbers(37).size());
    assertEquals(List.of(2, 4, 6), numbers(37).subList(0, 3));
    assertEquals(List.of(36, 37), numbers(37).subList(17, 19));
  }

  /** 100 in threes: 3, 6 … 99 and the last. */
  @Test
  void ofManyEveryThirdIsListedAndTheLast() {
    assertEquals(3, of(100).ringEvery());
    assertEquals(34, numbers(100).size());
    assertEquals(List.of(99, 100), numbers(100).subList(32, 34));
  }
}
