package frillbook.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.Filled;
import frillbook.rows.RingsOnPaper.RingGather;
import frillbook.rows.RingsOnPaper.RingOnPaper;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A page has room for twenty-two rings, each with boxes for six cushions. */
class RingsOnPaperTest {
  private static RingsOnPaper of(int count) {
    return of(count, 1);
  }

  private static RingsOnPaper of(int count, int quantity) {
    List<Ring> rings = IntStream.rangeClosed(1, count).mapToObj(RingsOnPaperTest::ring).toList();
    return RingsOnPaper.of(
        Briefs.inch().with("gather_section", 1).with("quantity", quantity).brief(),
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

  /** Pulled up inch by inch; the second ends at 4 and is 2 long. */
  @Test
  void aRingOnPaperHasTheFiguresOfTheRing() {
    RingOnPaper second = of(3).ringsOnPaper().get(1);
    assertEquals(2, second.paperRing());
    assertEquals(2.75, second.paperMarked());
    assertEquals(6, second.paperMark());
    assertEquals(2, second.paperMarks());
  }

  /** 1, 2 and 3 long, two and a half times full; a mark at every inch of the line. */
  @Test
  void everyRingTellsItsStripAndItsMarks() {
    assertEquals(
        List.of(new RingGather(2.5, 1), new RingGather(5, 2), new RingGather(7.5, 3)),
        of(3).ringGathers());
  }

  @Test
  void asManyAsThePageHoldsAreAllListed() {
    assertEquals(1, of(22).ringEvery());
    assertEquals(IntStream.rangeClosed(1, 22).boxed().toList(), numbers(22));
  }

  /** 23 of them: 2, 4 … 22 and the last. */
  @Test
  void ofMoreEverySecondIsListedAndTheLast() {
    assertEquals(2, of(23).ringEvery());
    assertEquals(12, numbers(23).size());
    assertEquals(List.of(2, 4, 6), numbers(23).subList(0, 3));
    assertEquals(List.of(22, 23), numbers(23).subList(10, 12));
  }

  /** 100 ÷ 22 is 4.5, so in fives: 5, 10 … 95 and the last. */
  @Test
  void ofManyEveryFifthIsListedAndTheLast() {
    assertEquals(5, of(100).ringEvery());
    assertEquals(20, numbers(100).size());
    assertEquals(List.of(95, 100), numbers(100).subList(18, 20));
  }

  /** 64 in threes: 3, 6 … 63 and the last, which is no third. */
  @Test
  void theLastIsListedThoughItIsNoneOfThose() {
    assertEquals(3, of(64).ringEvery());
    assertEquals(22, numbers(64).size());
    assertEquals(List.of(63, 64), numbers(64).subList(20, 22));
  }

  @Test
  void cushionsBeyondTheSixthHaveNoBox() {
    assertEquals(0, of(3, 6).cushionsUnticked());
    assertEquals(1, of(3, 7).cushionsUnticked());
    assertEquals(6, of(3, 12).cushionsUnticked());
  }
}
