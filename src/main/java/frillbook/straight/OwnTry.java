package frillbook.straight;

import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;

/**
 * Lengthwise strips of one length, so many to a cushion, and the fabric that all cushions take with
 * the discs in rectangles along one selvage.
 *
 * @param ownStrip cut length of every strip
 * @param ownColumn usable length with the discs in one column
 * @param ownColumns the same with as many columns as the fabric is wide for
 * @param ownCost the shorter of them as bought, and as much fabric as the strips cost in wages
 */
public record OwnTry(double ownStrip, double ownColumn, double ownColumns, double ownCost) {

  static OwnTry of(Fabric fabric, Pieces pieces, Join join, DiscColumns columns, int each) {
    double alike = (pieces.netOfCushion(join) + each * join.loss()) / each;
    double strip = Math.max(pieces.least(join), Rounding.upTo(pieces.markingStep(), alike));
    int wanted = pieces.cushions() * each + pieces.spareStrips();
    double one = columns.length(columns.one(), strip, wanted);
    double many = columns.length(columns.most(), strip, wanted);
    double bought = fabric.buyLengthFor(Math.min(one, many));
    return new OwnTry(strip, one, many, Rounding.settle(bought + wanted * pieces.stripWorth()));
  }
}
