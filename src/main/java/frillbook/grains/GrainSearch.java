package frillbook.grains;

import frillbook.bias.BiasCutting;
import frillbook.bias.BiasTrial;
import frillbook.brief.Grain;
import frillbook.cutting.Cloth;
import frillbook.cutting.Halving;
import frillbook.cutting.Trial;
import frillbook.straight.StraightCutting;
import frillbook.straight.StraightTrial;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The search for the shortest cloth in one grain alone, for a run other than the plan's own. It
 * tells the length and not the layout.
 *
 * @param straightTrials every length tried across or along the cloth; none for bias
 * @param biasTrials every length tried on the bias; none for straight grain
 * @param buyLength the shortest that is enough; empty where none was found
 */
public record GrainSearch(
    List<SheetTrial> straightTrials, List<BiasTrial> biasTrials, Optional<Double> buyLength) {

  /** No search at all. */
  public static final GrainSearch NONE = new GrainSearch(List.of(), List.of(), Optional.empty());

  /** The search in {@code grain}, which {@code starts} says the cloth is wide enough for. */
  public static GrainSearch of(FrillCutting cutting, GrainStarts starts, Grain grain) {
    int rows = cutting.searchRows(starts);
    return switch (grain) {
      case ACROSS -> straight(cutting.across(), rows);
      case ALONG -> straight(cutting.along(), rows);
      case BIAS -> bias(cutting.bias(), rows);
    };
  }

  private static GrainSearch straight(StraightCutting cutting, int rows) {
    List<StraightTrial> trials = cutting.trials(rows);
    Stream<SheetTrial> seen =
        trials.stream().map(trial -> new SheetTrial(trial, cutting.sheet(trial.usable())));
    return new GrainSearch(seen.toList(), List.of(), shortest(trials, cutting.cloth()));
  }

  private static GrainSearch bias(BiasCutting cutting, int rows) {
    List<BiasTrial> trials = cutting.trials(rows);
    return new GrainSearch(List.of(), trials, shortest(trials, cutting.cloth()));
  }

  private static Optional<Double> shortest(List<? extends Trial> trials, Cloth cloth) {
    return Halving.shortest(trials).map(trial -> trial.tried() * cloth.buyStep());
  }
}
