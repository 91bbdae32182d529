package frillbook.bias;

import frillbook.cutting.Halving;
import frillbook.cutting.OddPiece;
import frillbook.cutting.SearchReach;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
    List<BiasOdd> odd = BiasOdd.sorted(corners, cutting.join(), cutting.pieces().stripWidth());
    return new BiasFinding(
        trials, found.map(trial -> BiasPlan.of(cutting, trials, trial, odd)), corners, odd);
  }

  /**
   * The shorter strips as they are joined: one without its partner, and those after it, as ready.
   */
  public List<OddPiece> joined() {
    int lone = plan.map(BiasPlan::lone).filter(number -> number > 0).orElse(odd.size() + 1);
    return IntStream.range(0, odd.size())
        .mapToObj(i -> i + 1 < lone ? odd.get(i).piece() : odd.get(i).ready())
        .toList();
  }
}
