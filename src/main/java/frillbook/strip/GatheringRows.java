package frillbook.strip;

import frillbook.brief.Brief;
import frillbook.measure.LengthUnit;
import frillbook.measure.Rounding;

/**
 * Where the gathering rows lie, measured from the raw edge: 1/8 in (3 mm) either side of the sewn
 * line, so that two are 1/4 in apart (Utah State University Extension, Straight Ruffle), any more
 * as far from each other towards the raw edge, a single one before the line.
 *
 * @param gatherFirstRow the row nearest to the raw edge, 0 where there is no room for it; of two
 *     with an inset of 1/4 in: 1/8 in
 * @param gatherLastRow the row farthest from it: 3/8 in
 */
public record GatheringRows(double gatherFirstRow, double gatherLastRow) {

  public static GatheringRows of(Brief brief) {
    double inset = brief.frill().stitchInset();
    double apart = apart(brief);
    int rows = brief.thread().gatheringRows();
    double first = Math.max(0, inset - Math.max(1, rows - 1) * apart);
    return new GatheringRows(first, rows > 1 ? inset + apart : first);
  }

  /** Whether half a space at least is left beside the raw edge; nearer, a row would pull out. */
  public boolean fit(Brief brief) {
    return Rounding.settle(gatherFirstRow - apart(brief) / 2) >= 0;
  }

  private static double apart(Brief brief) {
    return brief.unit() == LengthUnit.INCH ? .125 : .3;
  }
}
