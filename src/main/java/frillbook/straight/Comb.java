package frillbook.straight;

import frillbook.cutting.CushionStrips;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;

/**
 * One way to lay straight strips and discs on a rectangle: full strips first, then lines of discs
 * against each other, with strips beside them.
 *
 * @param perLine discs in one line, along the strips
 * @param lines lines of discs
 * @param full full strips beside the lines; below 0 the discs do not fit
 * @param laneCount lanes beside the lines
 * @param whole of these, the lanes beside whole lines
 * @param moreWhole full strips end to end in a lane beside a whole line
 * @param moreLast the same beside the last line
 * @param reachWhole from the centre of a whole line's last disc to the edge, along the strips
 * @param reachLast the same in the last line, which may hold fewer discs
 * @param lastRoom what the discs of the last line leave of the last lane; 0 where that is not
 *     beside it
 * @param besideLines net length of the strips beside whole lines, or where every cushion has its
 *     own strips, how many of them can be a cushion's last
 * @param besideLast net length of the strips beside the last line, which may hold fewer discs
 * @param over net length beyond the need; below 0 the rectangle is too small, and all of the need
 *     where the discs or a strip worth joining do not lie on it
 */
public record Comb(
    int perLine,
    int lines,
    int full,
    int laneCount,
    int whole,
    int moreWhole,
    int moreLast,
    double reachWhole,
    double reachLast,
    double lastRoom,
    double besideLines,
    double besideLast,
    double over) {

  /** Tries {@code perLine} discs in a line on {@code sheet}, spread so. */
  static Comb of(StraightCutting cutting, Sheet sheet, Spread spread, int perLine) {
    Pieces pieces = cutting.pieces();
    Join join = cutting.join();
    List<Lane> lanes = cutting.beside();
    double strip = cutting.stripLength(sheet);
    int lines = Rounding.up((double) pieces.discCount() / perLine);
    double depth = depth(sheet, pieces, spread, lines);
    int full = Rounding.down((sheet.stack() - depth) / pieces.stripWidth());
    Lanes places =
        new Lanes(sheet, pieces, join, spread, cutting.cushion(), strip, perLine, lines, full);
    double besideLines = places.netOfWhole(lanes);
    double besideLast = places.netOfLast(lanes);
    boolean fits = full >= 0 && fits(sheet, pieces, join, perLine);
    int offered = full * places.perLane() + places.more();
    double shorter = besideLines + besideLast;
    return new Comb(
        perLine,
        lines,
        full,
        places.count(),
        places.besideWholeLines(),
        places.moreOfWhole(),
        places.moreOfLast(),
        places.reachOfWhole(),
        places.reachOfLast(),
        places.roomOfLastLane(lanes),
        besideLines,
        besideLast,
        fits ? over(cutting, strip, offered, shorter) : -pieces.netOfRun(join));
  }

  private static double over(StraightCutting cutting, double strip, int offered, double shorter) {
    Pieces pieces = cutting.pieces();
    Join join = cutting.join();
    if (pieces.ownStrips()) {
      int strips = cutting.cushion().over(pieces, offered, (int) shorter);
      return strips * CushionStrips.net(pieces, join, strip);
    }
    double spare = Math.min(strip, cutting.fabric().usableWidth());
    return offered * join.net(strip) + shorter - pieces.netNeeded(join, spare);
  }

  /** Two discs in zigzag touch where one is as far along the strips as the fabric allows. */
  static double depth(Sheet sheet, Pieces pieces, Spread spread, int lines) {
    double diameter = pieces.discDiameter();
    double along = sheet.run() - diameter;
    return spread == Spread.ZIGZAG ? diameter + Lane.halfChord(diameter, along) : lines * diameter;
  }

  private static boolean fits(Sheet sheet, Pieces pieces, Join join, int perLine) {
    double least = join.shortestUseful(pieces.shortestPiece());
    boolean discsFit =
        pieces.discCount() == 0 || perLine * pieces.discDiameter() <= sheet.run() + Rounding.TINY;
    return discsFit && sheet.run() >= least - Rounding.TINY;
  }
}
