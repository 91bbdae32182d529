package frillbook.straight;

import frillbook.cutting.CushionStrips;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The lanes beside the discs of one comb: which run past whole lines, which past the last line, and
 * how long a strip each leaves.
 *
 * @param spread how the discs lie
 * @param cushion strips of one cushion, where each has its own
 * @param strip length of a full strip; where the fabric holds several end to end, lanes are cut as
 *     if lines of discs were rectangles
 */
public record Lanes(
    Sheet sheet,
    Pieces pieces,
    Join join,
    Spread spread,
    CushionStrips cushion,
    double strip,
    int perLine,
    int lines,
    int full) {

  /** Lanes that lie wholly on the fabric beyond the full strips. */
  int count() {
    return Rounding.down(sheet.stack() / pieces.stripWidth()) - full;
  }

  /** Of these, the lanes that touch a line with all its discs; in zigzag, the near disc alone. */
  int besideWholeLines() {
    int touching =
        spread == Spread.ZIGZAG
            ? count() - touching().lanesAtSelvedge()
            : Rounding.up((lines - 1) * pieces.discDiameter() / pieces.stripWidth());
    return Math.max(0, Math.min(count(), touching));
  }

  private DiscLanes touching() {
    return DiscLanes.of(pieces, sheet.stack());
  }

  /** Lanes that a zigzag leaves to the far disc alone. */
  private int besideFarAlone() {
    return Math.min(touching().lanesAtSelvedge(), count() - touching().lanesAtDisc());
  }

  /** Length past the last disc's centre in a whole line. */
  double reachOfWhole() {
    return reach(perLine);
  }

  /** The same in the last line; between two discs apart, the distance of their centres. */
  double reachOfLast() {
    return reach(pieces.discCount() - (lines - 1) * perLine);
  }

  private double reach(int discs) {
    double beyond = sheet.run() - (discs - rims() / 2.0) * pieces.discDiameter();
    return beyond - more(discs) * strip;
  }

  /** Full strips end to end beside a line of so many {@code discs}. */
  private int more(int discs) {
    return Math.max(0, Rounding.down((sheet.run() - discs * pieces.discDiameter()) / strip));
  }

  /** Full strips in one lane beside a whole line. */
  int moreOfWhole() {
    return more(perLine);
  }

  /** The same beside the last line. */
  int moreOfLast() {
    return more(pieces.discCount() - (lines - 1) * perLine);
  }

  /** Full strips beside all discs. */
  int more() {
    int whole = besideWholeLines();
    return whole * moreOfWhole() + (count() - whole) * moreOfLast();
  }

  /** Full strips end to end in one lane without discs. */
  int perLane() {
    return Rounding.down(sheet.run() / strip);
  }

  /** Discs that a strip ends at the rim of; 0 where lanes are cut square behind the discs. */
  int rims() {
    return isDivided(sheet, strip) ? 0 : spread.rims();
  }

  static boolean isDivided(Sheet sheet, double strip) {
    return strip < sheet.run() - Rounding.TINY;
  }

  /**
   * Net length of the strips beside whole lines, or how many can be a cushion's last, each past its
   * nearest line as if all lines had the same reach. Two lanes may give more: see {@link #room}.
   */
  double netOfWhole(List<Lane> lanes) {
    return net(lanes, 0, besideWholeLines(), reachOfWhole(), Lane::laneHalfChord);
  }

  /**
   * The same beside the last line, or the far disc of a zigzag, of those that are among the lanes
   * looked at.
   */
  double netOfLast(List<Lane> lanes) {
    if (spread == Spread.ZIGZAG) {
      int after = count() - Lane.MOST;
      return net(lanes, after, besideFarAlone(), reachOfLast(), Lane::laneFarChord);
    }
    double room = roomOfLastLane(lanes);
    double last = isUseful(room) ? worth(room) : 0;
    int before = count() - 1;
    return net(lanes, besideWholeLines(), before, reachOfLast(), Lane::laneHalfChord) + last;
  }

  /**
   * Room of the last lane where it lies beside the last line and is looked at, else 0. It may have
   * its middle beyond the discs.
   */
  double roomOfLastLane(List<Lane> lanes) {
    boolean beside = count() > besideWholeLines() && count() <= lanes.size();
    return beside ? roomBesideLines(lanes.get(count() - 1)) : 0;
  }

  private double net(
      List<Lane> lanes, int after, int last, double reach, ToDoubleFunction<Lane> chord) {
    return lanes.stream()
        .filter(lane -> lane.laneNo() > after && lane.laneNo() <= last)
        .mapToDouble(lane -> reach - rims() * chord.applyAsDouble(lane))
        .filter(this::isUseful)
        .map(this::worth)
        .sum();
  }

  /** The strip cut in {@code lane}; none where it would be too short or there is no such lane. */
  LaneStrip strip(Lane lane, List<Lane> lanes) {
    double room = room(lane, lanes);
    boolean usable = lane.laneNo() <= count() && room >= pieces.least(join) - Rounding.TINY;
    return new LaneStrip(
        takenBy(lines - 1, lane),
        takenBy(lines, lane),
        room,
        after(lane, lanes),
        usable ? room : 0);
  }

  private double room(Lane lane, List<Lane> lanes) {
    if (spread != Spread.ZIGZAG) {
      return roomBesideLines(lane);
    }
    boolean besideNear = lane.laneNo() <= touching().lanesAtDisc();
    if (lane.laneNo() <= besideWholeLines()) {
      return besideNear ? reachOfWhole() - beside(1, lane) : sheet.run();
    }
    return !besideNear ? reachOfLast() - farChord(lane, lanes) : 0;
  }

  /** What lies between the strip and the far end: the disc there, or nothing. */
  private double after(Lane lane, List<Lane> lanes) {
    return switch (spread) {
      case LINES -> 0;
      case APART -> pieces.discRadius() + beside(lines, lane);
      case ZIGZAG ->
          lane.laneNo() <= besideWholeLines() ? 0 : pieces.discRadius() + farChord(lane, lanes);
    };
  }

  /** What the far disc of a zigzag takes; 0 where {@code lane} lies beyond the fabric. */
  private double farChord(Lane lane, List<Lane> lanes) {
    int fromFar = count() + 1 - lane.laneNo();
    return fromFar >= 1 && fromFar <= lanes.size() ? lanes.get(fromFar - 1).laneFarChord() : 0;
  }

  /**
   * Length that the discs leave of {@code lane}, up to the far edge. The last lane may begin beside
   * the last line and have its middle beyond; another may begin beside the last whole line and have
   * its middle beside a last line that holds fewer discs.
   */
  private double roomBesideLines(Lane lane) {
    boolean besideWhole = lane.laneNo() <= besideWholeLines();
    if (besideWhole && (lane.laneLine() < lines || rims() == 0)) {
      return reachOfWhole() - rims() * lane.laneHalfChord();
    }
    double room = reachOfLast() - rims() * beside(lines, lane);
    return besideWhole ? Math.min(reachOfWhole() - rims() * takenBy(lines - 1, lane), room) : room;
  }

  /** What a disc of {@code line}, beside or beyond which the lane's middle lies, takes of it. */
  private double beside(int line, Lane lane) {
    return lane.laneLine() > line ? takenBy(line, lane) : lane.laneHalfChord();
  }

  /** What the discs of {@code line} take of a lane that begins beside it and ends beyond it. */
  private double takenBy(int line, Lane lane) {
    double start = (lane.laneNo() - 1) * pieces.stripWidth();
    double offset = Math.max(0, start - (line - 0.5) * pieces.discDiameter());
    return Lane.halfChord(pieces.discRadius(), offset);
  }

  /** Net length of a strip, or 1 for a strip that may be a cushion's last. */
  private double worth(double room) {
    return pieces.ownStrips() ? 1 : join.net(room);
  }

  private boolean isUseful(double room) {
    double least = pieces.ownStrips() ? cushion.last() : pieces.least(join);
    return room >= least - Rounding.TINY;
  }
}
