package frillbook.straight;

import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;

/**
 * The lanes beside the discs of one comb: which run past whole lines, which past the last line, and
 * how long a strip each leaves.
 */
public record Lanes(Sheet sheet, Pieces pieces, Join join, int perLine, int lines, int full) {

  /** Lanes that lie wholly on the fabric beyond the full strips. */
  int count() {
    return Rounding.down(sheet.stack() / pieces.stripWidth()) - full;
  }

  /** Of these, the lanes that touch a line with all its discs. */
  int besideWholeLines() {
    double depth = (lines - 1) * pieces.discDiameter();
    return Math.max(0, Math.min(count(), Rounding.up(depth / pieces.stripWidth())));
  }

  /** Length past the last disc's centre in a whole line. */
  double reachOfWhole() {
    return reach(perLine);
  }

  /** The same in the last line. */
  double reachOfLast() {
    return reach(pieces.discCount() - (lines - 1) * perLine);
  }

  private double reach(int discs) {
    return sheet.run() - (discs - 0.5) * pieces.discDiameter();
  }

  /**
   * Net length of the strips in lanes {@code after} + 1 to {@code last}, each past its nearest line
   * as if all lines had the same {@code reach}. Two lanes may give more: see {@link #room}.
   */
  double net(List<Lane> lanes, int after, int last, double reach) {
    return lanes.stream()
        .filter(lane -> lane.laneNo() > after && lane.laneNo() <= last)
        .filter(lane -> lane.laneHalfChord() <= reach - least() + Rounding.TINY)
        .mapToDouble(lane -> join.net(reach - lane.laneHalfChord()))
        .sum();
  }

  /** The strip cut in {@code lane}; none where it would be too short or there is no such lane. */
  LaneStrip strip(Lane lane) {
    double room = room(lane);
    boolean usable = lane.laneNo() <= count() && room >= least() - Rounding.TINY;
    return new LaneStrip(takenBy(lines - 1, lane), takenBy(lines, lane), room, usable ? room : 0);
  }

  /**
   * Length that the discs leave of {@code lane}, up to the far edge. The last lane may begin beside
   * the last line and have its middle beyond; another may begin beside the last whole line and have
   * its middle beside a last line that holds fewer discs.
   */
  double room(Lane lane) {
    boolean besideWhole = lane.laneNo() <= besideWholeLines();
    if (besideWhole && lane.laneLine() < lines) {
      return reachOfWhole() - lane.laneHalfChord();
    }
    boolean beyond = lane.laneLine() > lines;
    double room = reachOfLast() - (beyond ? takenBy(lines, lane) : lane.laneHalfChord());
    return besideWhole ? Math.min(reachOfWhole() - takenBy(lines - 1, lane), room) : room;
  }

  /** What the discs of {@code line} take of a lane that begins beside it and ends beyond it. */
  private double takenBy(int line, Lane lane) {
    double start = (lane.laneNo() - 1) * pieces.stripWidth();
    double offset = Math.max(0, start - (line - 0.5) * pieces.discDiameter());
    return Lane.halfChord(pieces.discRadius(), offset);
  }

  private double least() {
    return join.shortestUseful(pieces.shortestPiece());
  }
}
