package frillbook.offcut;

import frillbook.bias.BiasPlan;
import frillbook.brief.Grain;
import frillbook.cutting.GrainPlan;
import frillbook.discs.DiscSizes;
import frillbook.grains.GrainPlans;
import frillbook.measure.Rounding;
import frillbook.straight.StraightPlan;

/**
 * The frill fabric with everything on it that is cut in the chosen grain.
 *
 * @param usableWidth between the selvages, after washing
 * @param stripWidth cut width
 * @param lineStep of bias cut lines along the edge
 */
public record OnTable(
    Grain grain,
    GrainPlans layouts,
    GrainPlan plan,
    DiscSizes sizes,
    double usableWidth,
    double stripWidth,
    double lineStep) {

  public StraightPlan straight() {
    return (StraightPlan) plan;
  }

  public BiasPlan bias() {
    return (BiasPlan) plan;
  }

  public boolean isBias() {
    return grain == Grain.BIAS;
  }

  public boolean isLengthwise() {
    return grain == Grain.LENGTHWISE;
  }

  /** Lanes before the discs that full strips are cut from; straight grain. */
  public int fullLanes() {
    StraightPlan plan = straight();
    return Math.min(plan.full(), Rounding.up((double) full() / plan.perLane()));
  }

  /** Whether full strips are cut beside the discs; straight grain. */
  public boolean cutsFullBeside() {
    return full() > straight().full() * straight().perLane();
  }

  int discs() {
    return sizes.matchingDiscCount();
  }

  double diameter() {
    return sizes.baseCutDiameter();
  }

  int full() {
    return plan.cut().all().full();
  }

  int shorter() {
    return plan.cut().all().odd();
  }

  /** Whether {@code piece} may be cut: of equally long ones it is not asked which. */
  public boolean mayBeCut(double piece) {
    return piece >= layouts.shortestStrip(plan) - Rounding.TINY;
  }

  /** Length of table on which the longest strip lies flat while its lines are marked. */
  double tableLength() {
    if (isBias()) {
      return Math.sqrt(2) * bias().shorter();
    }
    double full = full() > 0 ? plan.stripLength() : 0;
    return Math.max(full, layouts.oddLengths(plan).max().orElse(0));
  }
}
