package frillbook.straight;

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
 * @param full full strips beside the lines
 * @param laneCount lanes beside the lines
 * @param whole of these, the lanes beside whole lines
 * @param reachWhole from the centre of a whole line's last disc to the edge, along the strips
 * @param reachLast the same in the last line, which may hold fewer discs
 * @param besideLines net length of the strips beside whole lines
 * @param besideLast net length of the strips beside the last line, which may hold fewer discs
 * @param fits whether the discs and a strip worth joining lie on the rectangle
 * @param over net length beyond the need; below 0 the rectangle is too small
 */
public record Comb(
    int perLine,
    int lines,
    int full,
    int laneCount,
    int whole,
    double reachWhole,
    double reachLast,
    double besideLines,
    double besideLast,
    boolean fits,
    double over) {

  /** Tries {@code perLine} discs in a line on {@code sheet}. */
  static Comb of(Sheet sheet, Pieces pieces, Join join, List<Lane> lanes, int perLine) {
    int lines = Rounding.up((double) pieces.discCount() / perLine);
    int full = Rounding.down((sheet.stack() - lines * pieces.discDiameter()) / pieces.stripWidth());
    Lanes places = new Lanes(sheet, pieces, join, perLine, lines, full);
    int whole = places.besideWholeLines();
    double besideLines = places.net(lanes, 0, whole, places.reachOfWhole());
    double besideLast = places.net(lanes, whole, places.count(), places.reachOfLast());
    double total = full * join.net(sheet.run()) + besideLines + besideLast;
    boolean fits = fits(sheet, pieces, join, perLine, lines);
    double over = (fits ? total : 0) - pieces.netNeeded(join, sheet.run());
    return new Comb(
        perLine,
        lines,
        full,
        places.count(),
        whole,
        places.reachOfWhole(),
        places.reachOfLast(),
        besideLines,
        besideLast,
        fits,
        over);
  }

  private static boolean fits(Sheet sheet, Pieces pieces, Join join, int perLine, int lines) {
    double diameter = pieces.discDiameter();
    double least = join.shortestUseful(pieces.shortestPiece());
    boolean discsFit =
        pieces.discCount() == 0
            || perLine * diameter <= sheet.run() + Rounding.TINY
                && lines * diameter <= sheet.stack() + Rounding.TINY;
    return discsFit && sheet.run() >= least - Rounding.TINY;
  }
}
