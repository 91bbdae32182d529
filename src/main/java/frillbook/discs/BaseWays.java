package frillbook.discs;

import frillbook.brief.BackStyle;
import frillbook.brief.Brief;
import frillbook.measure.LengthUnit;
import frillbook.measure.Rounding;

/**
 * Lays bases and backs in a grid and in zigzag.
 *
 * @param bases these and matching discs from their fabric
 * @param backsAreDiscs whether each back is one disc, which a place for a base holds
 * @param width usable
 * @param perRow discs side by side
 */
record BaseWays(
    LengthUnit unit, int bases, boolean backsAreDiscs, DiscSizes sizes, double width, int perRow) {

  static BaseWays of(Brief brief, DiscSizes sizes, double width) {
    return new BaseWays(
        brief.unit(),
        brief.cushion().quantity() + sizes.baseMatchingCount(),
        brief.base().backStyle() == BackStyle.ONE_DISC,
        sizes,
        width,
        Rounding.down(width / sizes.baseCutDiameter()));
  }

  int backPerRow() {
    return Rounding.down(width / sizes.backCutDiameter());
  }

  /**
   * Backs are left out of the lines of bases even where they are discs: as squares of their own
   * size, beside the last line and behind it, they never take more.
   */
  BaseWay grid() {
    DiscRows discs = DiscRows.grid(bases, perRow, sizes.baseCutDiameter());
    int beside = beside(bases - (discs.rows() - 1) * perRow);
    return way(discs, sizes.backPieceCount(), beside);
  }

  BaseWay zigzag() {
    int backDiscs = backsAreDiscs ? sizes.backPieceCount() : 0;
    DiscRows discs =
        DiscRows.zigzag(unit, bases + backDiscs, perRow, sizes.baseCutDiameter(), width);
    return way(discs, sizes.backPieceCount() - backDiscs, 0);
  }

  /** Discs of a line may not overlap; of two equal lengths the grid is easier to mark. */
  boolean isZigzagShorter(BaseWay grid, BaseWay zigzag) {
    double room = zigzag.discs().pitch() - sizes.baseCutDiameter();
    boolean isApart = perRow == 1 || Rounding.settle(room) >= 0;
    return isApart && Rounding.settle(grid.length() - zigzag.length()) > 0;
  }

  private BaseWay way(DiscRows discs, int apart, int beside) {
    int rows = Rounding.up((double) (apart - beside) / backPerRow());
    double length = discs.length(sizes.baseCutDiameter()) + rows * sizes.backPieceHeight();
    return new BaseWay(discs, new BackRows(apart, beside, rows), length);
  }

  private int beside(int basesInLastRow) {
    double free = width - basesInLastRow * sizes.baseCutDiameter();
    int across = Rounding.down(free / sizes.backCutDiameter());
    return Math.min(sizes.backPieceCount(), across * sizes.backDeep());
  }
}
