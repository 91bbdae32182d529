package frillbook.bias;

import frillbook.cutting.Halving;
import frillbook.cutting.SearchReach;
import java.util.List;
import java.util.Optional;

/** The search for bias strips: the lengths tried, the plan, and its shorter strips. */
public record BiasFinding(
    List<BiasTrial> trials,
    Optional<BiasPlan> plan,
    List<CornerStrips> corners,
    List<BiasOdd> odd) {

  public static BiasFinding of(BiasCutting cutting, boolean can, SearchReach reach) {
    List<BiasTrial> trials = can ? cutting.trials(reach) : List.of();
    Optional<BiasTrial> found = Halving.shortest(trials);
    List<CornerStrips> corners = found.map(cutting::cornerStrips).orElse(List.of());
    List<BiasOdd> odd = BiasOdd.sorted(corners, cutting.join());
    return new BiasFinding(
        trials, found.map(trial -> BiasPlan.of(cutting, trials, trial, odd)), corners, odd);
  }
}
