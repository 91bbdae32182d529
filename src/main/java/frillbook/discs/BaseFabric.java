package frillbook.discs;

import frillbook.brief.Brief;
import frillbook.cutting.Fabric;
import frillbook.naming.Prefixed;

/**
 * How bases, backs and, if the maker likes, matching discs are cut from one fabric, in a square
 * grid or in zigzag, whichever takes less of it.
 *
 * @param basePerRow discs side by side
 * @param backPerRow back pieces side by side in a line of their own
 * @param grid lines of bases and matching discs, then lines of back pieces, the first of these
 *     beside the last line of discs where they fit
 * @param zigzag lines of bases, matching discs and backs in one disc, then lines of other back
 *     pieces
 * @param baseInZigzag whether they lie in zigzag
 * @param discs the discs as they lie
 * @param backs the other back pieces as they lie
 * @param baseUsedLength fabric the lines take, after washing; as often as widths are sewn together
 * @param baseBuyLength that length before washing, rounded up to the buy step
 */
public record BaseFabric(
    int basePerRow,
    int backPerRow,
    @Prefixed("base_grid") BaseGrid grid,
    @Prefixed("base_zigzag") BaseZigzag zigzag,
    boolean baseInZigzag,
    @Prefixed("base") DiscRows discs,
    @Prefixed("back") BackRows backs,
    double baseUsedLength,
    double baseBuyLength) {

  /** The lines for {@code brief} on {@code fabric}. */
  public static BaseFabric of(Brief brief, DiscSizes sizes, Fabric fabric) {
    BaseWidth width = BaseWidth.of(brief, sizes, fabric);
    BaseWays ways = BaseWays.of(brief, sizes, width.baseUsableWidth());
    BaseWay grid = ways.grid();
    BaseWay zigzag = ways.zigzag();
    boolean inZigzag = ways.isZigzagShorter(grid, zigzag);
    BaseWay way = inZigzag ? zigzag : grid;
    double used = width.baseWidths() * way.length();
    return new BaseFabric(
        ways.perRow(),
        ways.backPerRow(),
        BaseGrid.of(grid),
        BaseZigzag.of(zigzag, sizes.baseCutDiameter()),
        inZigzag,
        way.discs(),
        way.backs(),
        used,
        fabric.buyLengthFor(used));
  }
}
