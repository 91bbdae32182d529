package frillbook.rows;

import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The rings that one printed page holds: all of them, or every so many and the last.
 *
 * @param ringEvery one ring in so many is listed; 1 where the page holds all
 * @param ringsOnPaper the rings listed, in their order
 */
public record RingsOnPaper(int ringEvery, List<RingOnPaper> ringsOnPaper) {
  /** Rows of the page's table. */
  public static final int MOST = 36;

  /**
   * A ring as it is listed on paper; the figures are those of {@link Ring}.
   *
   * @param paperRing its number
   * @param paperMarked radius to mark on the base where the turn ends
   * @param paperLength sewn length of this ring alone
   * @param paperStitched sewn length so far
   * @param paperMark strip mark
   */
  public record RingOnPaper(
      int paperRing,
      double paperMarked,
      double paperLength,
      double paperStitched,
      double paperMark) {
    static RingOnPaper of(Ring ring) {
      return new RingOnPaper(
          ring.ringNo(),
          ring.markedRadius(),
          ring.ringLength(),
          ring.runningStitched(),
          ring.runningFlat());
    }
  }

  public static RingsOnPaper of(Rings rings) {
    int count = rings.ringCount();
    int every = Rounding.up((double) count / MOST);
    List<RingOnPaper> listed =
        IntStream.rangeClosed(1, Rounding.up((double) count / every))
            .map(row -> Math.min(count, row * every))
            .mapToObj(ring -> RingOnPaper.of(rings.rings().get(ring - 1)))
            .toList();
    return new RingsOnPaper(every, listed);
  }
}
