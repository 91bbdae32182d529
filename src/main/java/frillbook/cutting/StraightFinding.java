package frillbook.cutting;

import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The search for straight strips: the lengths tried, the plan, and its shorter strips. */
record StraightFinding(
    List<StraightTrial> trials,
    Optional<StraightPlan> plan,
    List<Double> pieces,
    List<OddPiece> odd) {

  static StraightFinding of(StraightCutting cutting, boolean can, int searchRows) {
    List<StraightTrial> trials = can ? cutting.trials(searchRows) : List.of();
    Optional<StraightTrial> found = Halving.shortest(trials);
    List<Double> pieces = found.map(cutting::pieces).orElse(Collections.nCopies(Lane.MOST, 0.0));
    return new StraightFinding(
        trials,
        found.map(trial -> StraightPlan.of(cutting, trials, trial)),
        pieces,
        FrillLayouts.longestFirst(pieces, cutting.join()));
  }
}
