package frillbook.plan;

import frillbook.brief.Grain;
import frillbook.cutting.GrainPlan;
import frillbook.grains.GrainPlans;
import frillbook.materials.Rebilling;
import frillbook.naming.Coded;
import frillbook.naming.Prefixed;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One grain of the three set side by side.
 *
 * @param grainName the grain
 * @param grainFits whether the fabric is wide enough
 * @param grainFound whether a length of fabric was found
 * @param figures the plan's figures; none where it was not
 * @param work what the order takes; none there either, or where the chosen grain has no plan
 */
public record GrainRow(
    Grain grainName,
    Fits grainFits,
    boolean grainFound,
    Optional<Figures> figures,
    Optional<Work> work) {

  /** Whether strips and discs lie on the fabric in a grain. */
  public enum Fits implements Coded {
    FITS,
    TOO_NARROW
  }

  /**
   * @param grainStrips strips cut
   * @param grainJoins joins in the run
   * @param grainBuy fabric to buy
   * @param grainRatio bought over lower bound
   */
  public record Figures(int grainStrips, int grainJoins, double grainBuy, double grainRatio) {
    static Figures of(GrainPlan plan) {
      return new Figures(
          plan.cut().all().count(),
          plan.cut().joinCount(),
          plan.buyLength(),
          plan.length().ratio());
    }
  }

  /**
   * What the order takes in a grain. Lengths are in the unit of the brief, except thread.
   *
   * @param grainCutWidth cut width of its strips
   * @param grainUsed frill fabric in strips and matching discs, after washing
   * @param grainThread in metres
   * @param grainHours in hours
   * @param asked what is asked for it; empty where the profit is no possible one either
   */
  public record Work(
      double grainCutWidth,
      double grainUsed,
      double grainThread,
      double grainHours,
      @Prefixed("grain") Rebilling.Cost cost,
      Optional<Asked> asked) {}

  /**
   * @param grainNetEach price of one before tax
   * @param grainPrice price of all, with tax
   */
  public record Asked(double grainNetEach, double grainPrice) {}

  /** {@code reckoner} is empty where the chosen grain has no plan. */
  static List<GrainRow> all(GrainPlans layouts, Optional<GrainReckoner> reckoner) {
    return Arrays.stream(Grain.values())
        .map(grain -> of(grain, layouts.plan(grain), reckoner))
        .toList();
  }

  private static GrainRow of(
      Grain grain, Optional<GrainPlan> plan, Optional<GrainReckoner> reckoner) {
    Fits fits = plan.isPresent() ? Fits.FITS : Fits.TOO_NARROW;
    Optional<Work> work = reckoner.flatMap(from -> plan.map(found -> from.work(grain, found)));
    return new GrainRow(grain, fits, plan.isPresent(), plan.map(Figures::of), work);
  }

  /** Price of the order in this grain; empty where there is none. */
  Optional<Double> price() {
    return work.flatMap(Work::asked).map(Asked::grainPrice);
  }
}
