package frillbook.picture;

import frillbook.discs.BaseCloth;
import frillbook.discs.DiscSizes;
import frillbook.measure.Rounding;

/**
 * The base cloth as it is cut; lengths in the unit of the brief, x along the selvage, y across.
 *
 * @param bases discs in all
 * @param rows how they lie with the back pieces
 * @param length left of the bought length after washing
 * @param width usable width
 */
public record CutBase(int bases, DiscSizes discs, BaseCloth rows, double length, double width) {

  int backs() {
    return discs.backPieceCount();
  }

  /** Back pieces that lie behind each other beside the last row of bases. */
  int backDeep() {
    return Rounding.down(discs.baseCutDiameter() / discs.backPieceHeight());
  }

  /** What the bases in their last row take of the width. */
  double lastWidth() {
    return (bases - (rows.baseRows() - 1) * rows.basePerRow()) * discs.baseCutDiameter();
  }

  /** The centre of base {@code base}, from 0. */
  Spot base(int base) {
    double diameter = discs.baseCutDiameter();
    return new Spot(
        (base / rows.basePerRow() + .5) * diameter, (base % rows.basePerRow() + .5) * diameter);
  }

  /** The corner of the rectangle for back piece {@code back}, from 0, nearest to x = y = 0. */
  Spot back(int back) {
    return back < rows.backBeside() ? beside(back) : inOwnRow(back - rows.backBeside());
  }

  private Spot beside(int back) {
    double start = (rows.baseRows() - 1) * discs.baseCutDiameter();
    return new Spot(
        start + back % backDeep() * discs.backPieceHeight(),
        lastWidth() + back / backDeep() * discs.backCutDiameter());
  }

  private Spot inOwnRow(int back) {
    double start = rows.baseRows() * discs.baseCutDiameter();
    return new Spot(
        start + back / rows.backPerRow() * discs.backPieceHeight(),
        back % rows.backPerRow() * discs.backCutDiameter());
  }
}
