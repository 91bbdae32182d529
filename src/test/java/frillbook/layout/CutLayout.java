package frillbook.layout;

import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.StripsCut;
import frillbook.grains.GrainPlans;
import frillbook.measure.Rounding;
import frillbook.plan.GrainsCompared;
import frillbook.plan.Plan;
import frillbook.plan.Sizes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A cutting plan drawn to measure on the bought and washed frill fabric.
 *
 * <p>It shows every strip the layout has room for and marks those the plan cuts: full strips first,
 * then the longest of the others; of equally long ones those offered first.
 *
 * @param length of the fabric along the selvage, after washing
 * @param width of the fabric between the selvages, after washing
 * @param strips full strips first, then the others from the longest to the shortest
 * @param discs all matching discs of the order
 */
public record CutLayout(
    double length, double width, List<PlacedStrip> strips, List<PlacedDisc> discs) {

  /** The layout of {@code brief} in {@code grain}; empty where it has no plan in that grain. */
  public static Optional<CutLayout> of(Brief brief, Grain grain) {
    return of(brief, Plan.of(brief), grain);
  }

  /** The same from a {@code plan} of {@code brief} that is already made. */
  public static Optional<CutLayout> of(Brief brief, Plan plan, Grain grain) {
    return plan.cutting()
        .map(GrainsCompared::layouts)
        .flatMap(l -> of(brief, plan.sizes(), l, grain));
  }

  private static Optional<CutLayout> of(Brief brief, Sizes sizes, GrainPlans layouts, Grain grain) {
    return switch (grain) {
      case CROSSWISE, LENGTHWISE -> straight(sizes, layouts, grain);
      case BIAS -> bias(sizes, layouts, brief.joins().joinLine().isDiagonal(grain));
    };
  }

  private static Optional<CutLayout> straight(Sizes sizes, GrainPlans layouts, Grain grain) {
    var found = grain == Grain.LENGTHWISE ? layouts.lengthwise() : layouts.crosswise();
    return found.map(
        plan -> {
          var places =
              new StraightPlaces(
                  grain,
                  plan,
                  grain == Grain.LENGTHWISE ? plan.usableLength() : sizes.usableWidth(),
                  sizes.usableWidth(),
                  sizes.strip().straightCutWidth());
          return of(
              plan.usableLength(),
              sizes.usableWidth(),
              plan,
              places.strips(layouts.lanes()),
              places.discs(sizes.discs()));
        });
  }

  private static Optional<CutLayout> bias(Sizes sizes, GrainPlans layouts, boolean slanting) {
    return layouts
        .bias()
        .map(
            plan -> {
              var places =
                  new BiasPlaces(
                      plan,
                      layouts.biasSetting().perBand(),
                      sizes.usableWidth(),
                      sizes.strip().biasCutWidth(),
                      slanting);
              return of(
                  plan.usableLength(),
                  sizes.usableWidth(),
                  plan,
                  places.strips(layouts.corners(), layouts.beside(), layouts.past()),
                  places.discs(sizes.discs()));
            });
  }

  private static CutLayout of(
      double length,
      double width,
      GrainPlan plan,
      List<PlacedStrip> offered,
      List<PlacedDisc> discs) {
    return new CutLayout(length, width, marked(offered, plan.cut()), List.copyOf(discs));
  }

  private static List<PlacedStrip> marked(List<PlacedStrip> offered, StripsCut cut) {
    List<PlacedStrip> strips = new ArrayList<>();
    offered.stream()
        .filter(PlacedStrip::full)
        .forEach(strip -> strips.add(strip.asCut(strips.size() < cut.all().full())));
    int full = strips.size();
    offered.stream()
        .filter(strip -> !strip.full())
        .sorted(Comparator.comparingDouble(CutLayout::settledLength).reversed())
        .forEach(strip -> strips.add(strip.asCut(strips.size() - full < cut.all().odd())));
    return List.copyOf(strips);
  }

  /** So that equal lengths stay in the order they are offered in. */
  private static double settledLength(PlacedStrip strip) {
    return Rounding.settle(strip.length());
  }
}
