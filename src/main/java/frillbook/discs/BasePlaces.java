package frillbook.discs;

import frillbook.measure.Rounding;

/**
 * Where bases and back pieces lie on their fabric: x along the selvage from the start of the
 * fabric, y across it from one selvage; lengths in the unit of the brief.
 *
 * @param bases discs in all
 * @param rows how many lie side by side and behind each other
 */
public record BasePlaces(int bases, DiscSizes sizes, BaseFabric rows) {

  /** A place on the fabric. */
  public record Place(double x, double y) {}

  public int backs() {
    return sizes.backPieceCount();
  }

  /** Back pieces that lie behind each other beside the last row of bases. */
  public int backDeep() {
    return Rounding.down(sizes.baseCutDiameter() / sizes.backPieceHeight());
  }

  /** What the bases in their last row take of the width. */
  public double lastWidth() {
    return (bases - (rows.baseRows() - 1) * rows.basePerRow()) * sizes.baseCutDiameter();
  }

  /** The centre of base {@code base}, from 0. */
  public Place base(int base) {
    double diameter = sizes.baseCutDiameter();
    return new Place(
        (base / rows.basePerRow() + .5) * diameter, (base % rows.basePerRow() + .5) * diameter);
  }

  /** The corner of the rectangle for back piece {@code back}, from 0, nearest to x = y = 0. */
  public Place back(int back) {
    return back < rows.backBeside() ? beside(back) : inOwnRow(back - rows.backBeside());
  }

  private Place beside(int back) {
    double start = (rows.baseRows() - 1) * sizes.baseCutDiameter();
    return new Place(
        start + back % backDeep() * sizes.backPieceHeight(),
        lastWidth() + back / backDeep() * sizes.backCutDiameter());
  }

  private Place inOwnRow(int back) {
    double start = rows.baseRows() * sizes.baseCutDiameter();
    return new Place(
        start + back / rows.backPerRow() * sizes.backPieceHeight(),
        back % rows.backPerRow() * sizes.backCutDiameter());
  }
}
