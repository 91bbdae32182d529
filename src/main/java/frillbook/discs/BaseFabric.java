package frillbook.discs;

import frillbook.brief.Brief;
import frillbook.cutting.Fabric;
import frillbook.measure.Rounding;

/**
 * How bases and backs are cut from their own fabric: rows of bases, then rows of back pieces, the
 * first back pieces beside the last row of bases where they fit.
 *
 * @param basePerRow bases side by side
 * @param baseRows rows that hold a base
 * @param backBeside back pieces in the last row of bases
 * @param backPerRow back pieces side by side in a row of their own
 * @param backRows rows of back pieces alone
 * @param baseUsedLength fabric the rows take, after washing
 * @param baseBuyLength that length before washing, rounded up to the buy step
 */
public record BaseFabric(
    int basePerRow,
    int baseRows,
    int backBeside,
    int backPerRow,
    int backRows,
    double baseUsedLength,
    double baseBuyLength) {

  /** The rows for {@code brief} on {@code fabric}, which is at least as wide as either piece. */
  public static BaseFabric of(Brief brief, DiscSizes sizes, Fabric fabric) {
    int bases = brief.cushion().quantity();
    int basePerRow = Rounding.down(fabric.usableWidth() / sizes.baseCutDiameter());
    int baseRows = Rounding.up((double) bases / basePerRow);
    int beside = beside(sizes, fabric, bases - (baseRows - 1) * basePerRow);
    int backPerRow = Rounding.down(fabric.usableWidth() / sizes.backCutDiameter());
    int backRows = Rounding.up((double) (sizes.backPieceCount() - beside) / backPerRow);
    double used = baseRows * sizes.baseCutDiameter() + backRows * sizes.backPieceHeight();
    return new BaseFabric(
        basePerRow, baseRows, beside, backPerRow, backRows, used, fabric.buyLengthFor(used));
  }

  private static int beside(DiscSizes sizes, Fabric fabric, int basesInLastRow) {
    double free = fabric.usableWidth() - basesInLastRow * sizes.baseCutDiameter();
    int across = Rounding.down(free / sizes.backCutDiameter());
    int deep = Rounding.down(sizes.baseCutDiameter() / sizes.backPieceHeight());
    return Math.min(sizes.backPieceCount(), across * deep);
  }
}
