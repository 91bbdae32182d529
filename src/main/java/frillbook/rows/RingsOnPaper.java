package frillbook.rows;

import frillbook.brief.Brief;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The rings that one printed page holds: all of them, or every so many and the last.
 *
 * @param ringEvery one ring in so many is listed; 1 where the page holds all
 * @param cushionsUnticked cushions beyond those that every ring has a box to tick for
 * @param ringGathers how every ring is gathered
 * @param ringsOnPaper the rings listed, in their order
 */
public record RingsOnPaper(
    int ringEvery,
    int cushionsUnticked,
    List<RingGather> ringGathers,
    List<RingOnPaper> ringsOnPaper) {
  /** Rows of the page's table. */
  public static final int MOST = 22;

  /** Boxes beside a ring. */
  private static final int BOXES = 6;

  /**
   * How a ring is gathered.
   *
   * @param ringFlat what it takes of the strip before gathering, its lap included
   * @param ringMarks gathering marks met in it; the last of a separate ring is its end
   */
  public record RingGather(double ringFlat, int ringMarks) {
    static RingGather of(Brief brief, Ring ring, GatherParts parts) {
      double flat = ring.ringLength() * brief.frill().fullness();
      return new RingGather(flat, parts.marksIn(brief, ring));
    }
  }

  /**
   * A ring as it is listed on paper; the figures are those of {@link Ring}.
   *
   * @param paperRing its number
   * @param paperMarked radius to mark on the base where the turn ends
   * @param paperMark strip mark
   * @param paperMarks gathering marks met in it
   */
  public record RingOnPaper(int paperRing, double paperMarked, double paperMark, int paperMarks) {
    static RingOnPaper of(Ring ring, int marks) {
      return new RingOnPaper(ring.ringNo(), ring.markedRadius(), ring.runningFlat(), marks);
    }
  }

  /** The ring of the last line. */
  int lastRing() {
    return ringsOnPaper.get(ringsOnPaper.size() - 1).paperRing();
  }

  public static RingsOnPaper of(Brief brief, Rings rings) {
    GatherParts parts = GatherParts.of(brief, rings);
    int count = rings.ringCount();
    int every = Rounding.up((double) count / MOST);
    List<RingGather> gathers =
        rings.rings().stream().map(ring -> RingGather.of(brief, ring, parts)).toList();
    List<RingOnPaper> listed =
        IntStream.rangeClosed(1, Rounding.up((double) count / every))
            .map(row -> Math.min(count, row * every))
            .mapToObj(
                ring ->
                    RingOnPaper.of(rings.rings().get(ring - 1), gathers.get(ring - 1).ringMarks()))
            .toList();
    int unticked = Math.max(0, brief.cushion().quantity() - BOXES);
    return new RingsOnPaper(every, unticked, gathers, listed);
  }
}
