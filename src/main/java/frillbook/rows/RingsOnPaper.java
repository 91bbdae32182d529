package frillbook.rows;

import frillbook.brief.Brief;
import frillbook.brief.FrillSpec;
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
   * @param paperMarks gathering marks met in it
   * @param paperEdgeFullness fullness seen at the free edge
   */
  public record RingOnPaper(
      int paperRing,
      double paperMarked,
      double paperLength,
      double paperStitched,
      double paperMark,
      int paperMarks,
      double paperEdgeFullness) {
    static RingOnPaper of(Ring ring, int marks, FrillSpec frill) {
      return new RingOnPaper(
          ring.ringNo(),
          ring.markedRadius(),
          ring.ringLength(),
          ring.runningStitched(),
          ring.runningFlat(),
          marks,
          Cover.edgeFullness(frill, ring.ringRadius()));
    }
  }

  public static RingsOnPaper of(Brief brief, Rings rings) {
    GatherParts parts = GatherParts.of(brief, rings);
    int count = rings.ringCount();
    int every = Rounding.up((double) count / MOST);
    List<RingOnPaper> listed =
        IntStream.rangeClosed(1, Rounding.up((double) count / every))
            .map(row -> Math.min(count, row * every))
            .mapToObj(ring -> rings.rings().get(ring - 1))
            .map(ring -> RingOnPaper.of(ring, parts.marksIn(brief, ring), brief.frill()))
            .toList();
    return new RingsOnPaper(every, listed);
  }
}
