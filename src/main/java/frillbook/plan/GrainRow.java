package frillbook.plan;

import frillbook.brief.Grain;
import frillbook.cutting.GrainPlan;
import frillbook.grains.GrainPlans;
import frillbook.naming.Coded;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One grain of the three set side by side.
 *
 * @param grainName the grain
 * @param grainFits whether the fabric is wide enough
 * @param figures the plan's figures; none where it is not
 */
public record GrainRow(Grain grainName, Fits grainFits, Optional<Figures> figures) {

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

  static List<GrainRow> all(GrainPlans layouts) {
    return Arrays.stream(Grain.values()).map(grain -> of(grain, layouts.plan(grain))).toList();
  }

  private static GrainRow of(Grain grain, Optional<GrainPlan> plan) {
    Fits fits = plan.isPresent() ? Fits.FITS : Fits.TOO_NARROW;
    return new GrainRow(grain, fits, plan.map(Figures::of));
  }
}
