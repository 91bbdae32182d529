package frillbook.grains;

import frillbook.bias.BiasCutting;
import frillbook.bias.BiasTrial;
import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Halving;
import frillbook.cutting.SearchReach;
import frillbook.cutting.Trial;
import frillbook.straight.StraightCutting;
import frillbook.straight.StraightTrial;
import java.util.List;
import java.util.Optional;

/**
 * The search for the shortest fabric in one grain alone, for a run other than the plan's own. It
 * tells the length and not the layout.
 *
 * @param straightTrials every length tried across or along the fabric; none for bias
 * @param biasTrials every length tried on the bias; none for straight grain
 * @param buyLength the shortest that is enough; empty where none was found
 */
public record GrainSearch(
    List<StraightTrial> straightTrials, List<BiasTrial> biasTrials, Optional<Double> buyLength) {

  /** The search in {@code grain}, which {@code starts} says the fabric is wide enough for. */
  public static GrainSearch of(FrillCutting cutting, GrainStarts starts, Grain grain) {
    SearchReach reach = cutting.reach(starts);
    return switch (grain) {
      case CROSSWISE -> straight(cutting.crosswise(), reach);
      case LENGTHWISE -> straight(cutting.lengthwise(), reach);
      case BIAS -> bias(cutting.bias(), reach);
    };
  }

  private static GrainSearch straight(StraightCutting cutting, SearchReach reach) {
    List<StraightTrial> trials = cutting.trials(reach);
    return new GrainSearch(trials, List.of(), shortest(trials, cutting.fabric()));
  }

  private static GrainSearch bias(BiasCutting cutting, SearchReach reach) {
    List<BiasTrial> trials = cutting.trials(reach);
    return new GrainSearch(List.of(), trials, shortest(trials, cutting.fabric()));
  }

  private static Optional<Double> shortest(List<? extends Trial> trials, Fabric fabric) {
    return Halving.shortest(trials).map(trial -> trial.tried() * fabric.buyStep());
  }
}
