package frillbook.layout;

import frillbook.brief.Brief;
import frillbook.discs.BasePlaces;
import frillbook.discs.BaseWidth;
import frillbook.discs.DiscSizes;
import frillbook.plan.Plan;
import frillbook.plan.Sizes;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Bases and backs drawn to measure on their own fabric, after washing.
 *
 * @param length the lines take along the selvage, of each width that is sewn to others
 * @param width of the fabric between the selvages, of all widths together
 * @param discs bases and, in zigzag, backs in one disc, in lines from the start of the fabric
 * @param backs rectangles the other back pieces are cut from
 */
public record BaseLayout(
    double length, double width, List<PlacedDisc> discs, List<PlacedRectangle> backs) {

  /** The layout of {@code brief}. */
  public static BaseLayout of(Brief brief) {
    Plan plan = Plan.of(brief);
    Sizes sizes = plan.sizes();
    return of(new BasePlaces(sizes.discs(), plan.base().base()), sizes.baseWidth());
  }

  private static BaseLayout of(BasePlaces places, BaseWidth width) {
    return new BaseLayout(
        places.fabric().baseUsedLength() / width.baseWidths(),
        width.baseUsableWidth(),
        IntStream.range(0, places.discs()).mapToObj(i -> disc(i, places)).toList(),
        IntStream.range(0, places.backs()).mapToObj(i -> back(i, places)).toList());
  }

  private static PlacedDisc disc(int disc, BasePlaces places) {
    BasePlaces.Place centre = places.disc(disc);
    return new PlacedDisc(new Point(centre.x(), centre.y()), places.sizes().baseCutDiameter());
  }

  private static PlacedRectangle back(int back, BasePlaces places) {
    BasePlaces.Place corner = places.back(back);
    DiscSizes sizes = places.sizes();
    return new PlacedRectangle(
        new Point(corner.x(), corner.y()), sizes.backPieceHeight(), sizes.backCutDiameter());
  }
}
