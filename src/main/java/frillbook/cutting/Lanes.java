package frillbook.cutting;

import frillbook.measure.Rounding;
import java.util.List;

/**
 * The lanes beside the discs of one comb: which run past whole lines, which past the last line, and
 * how long a strip each leaves.
 */
record Lanes(Sheet sheet, Pieces pieces, Join join, int perLine, int lines, int full) {

  /** Lanes that lie wholly on the cloth beyond the full strips. */
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

  /** Net length of the strips in lanes {@code after} + 1 to {@code last}. */
  double net(List<Lane> lanes, int after, int last, double reach) {
    return lanes.stream()
        .filter(lane -> lane.laneNo() > after && lane.laneNo() <= last)
        .filter(lane -> lane.laneHalfChord() <= reach - least() + Rounding.TINY)
        .mapToDouble(lane -> join.net(reach - lane.laneHalfChord()))
        .sum();
  }

  /** The strip cut in {@code lane}; 0 where it would be too short or there is no such lane. */
  double piece(Lane lane) {
    double reach = lane.laneNo() <= besideWholeLines() ? reachOfWhole() : reachOfLast();
    boolean usable =
        lane.laneNo() <= count() && lane.laneHalfChord() <= reach - least() + Rounding.TINY;
    return usable ? reach - lane.laneHalfChord() : 0;
  }

  private double least() {
    return join.shortestUseful(pieces.shortestPiece());
  }
}
