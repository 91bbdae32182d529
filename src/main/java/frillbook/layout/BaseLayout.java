package frillbook.layout;

import frillbook.brief.Brief;
import frillbook.discs.BaseCloth;
import frillbook.discs.DiscSizes;
import frillbook.measure.Rounding;
import frillbook.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bases and backs drawn to measure on their own cloth, after washing.
 *
 * @param length the rows take along the selvage
 * @param width of the cloth between the selvages
 * @param bases discs, in rows from the start of the cloth
 * @param backs rectangles the back pieces are cut from
 */
public record BaseLayout(
    double length, double width, List<PlacedDisc> bases, List<PlacedRectangle> backs) {

  /** The layout of {@code brief}; empty where it has no plan. */
  public static Optional<BaseLayout> of(Brief brief) {
    Plan plan = Plan.of(brief);
    int bases = brief.cushion().quantity();
    double width = plan.sizes().baseUsableWidth();
    return plan.work().map(work -> of(bases, plan.sizes().discs(), work.base(), width));
  }

  private static BaseLayout of(int bases, DiscSizes sizes, BaseCloth rows, double width) {
    return new BaseLayout(
        rows.baseUsedLength(), width, bases(bases, sizes, rows), backs(bases, sizes, rows));
  }

  private static List<PlacedDisc> bases(int count, DiscSizes sizes, BaseCloth rows) {
    List<PlacedDisc> bases = new ArrayList<>();
    double diameter = sizes.baseCutDiameter();
    for (int i = 0; i < count; i++) {
      double x = (i / rows.basePerRow() + 0.5) * diameter;
      double y = (i % rows.basePerRow() + 0.5) * diameter;
      bases.add(new PlacedDisc(new Point(x, y), diameter));
    }
    return List.copyOf(bases);
  }

  private static List<PlacedRectangle> backs(int bases, DiscSizes sizes, BaseCloth rows) {
    List<PlacedRectangle> backs = new ArrayList<>();
    for (int i = 0; i < rows.backBeside(); i++) {
      backs.add(beside(i, bases, sizes, rows));
    }
    for (int i = 0; i < sizes.backPieceCount() - rows.backBeside(); i++) {
      backs.add(inOwnRow(i, sizes, rows));
    }
    return List.copyOf(backs);
  }

  /** Beside the last row of bases, where narrow pieces may lie behind each other. */
  private static PlacedRectangle beside(int i, int bases, DiscSizes sizes, BaseCloth rows) {
    int deep = Rounding.down(sizes.baseCutDiameter() / sizes.backPieceHeight());
    int wholeRows = rows.baseRows() - 1;
    double basesWide = (bases - wholeRows * rows.basePerRow()) * sizes.baseCutDiameter();
    double x = wholeRows * sizes.baseCutDiameter() + (i % deep) * sizes.backPieceHeight();
    return back(x, basesWide + (i / deep) * sizes.backCutDiameter(), sizes);
  }

  private static PlacedRectangle inOwnRow(int i, DiscSizes sizes, BaseCloth rows) {
    double x =
        rows.baseRows() * sizes.baseCutDiameter()
            + (i / rows.backPerRow()) * sizes.backPieceHeight();
    return back(x, (i % rows.backPerRow()) * sizes.backCutDiameter(), sizes);
  }

  private static PlacedRectangle back(double x, double y, DiscSizes sizes) {
    return new PlacedRectangle(new Point(x, y), sizes.backPieceHeight(), sizes.backCutDiameter());
  }
}
