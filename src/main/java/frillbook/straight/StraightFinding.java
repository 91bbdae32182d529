package frillbook.straight;

import frillbook.cutting.Halving;
import frillbook.cutting.OddPiece;
import frillbook.cutting.SearchReach;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The search for straight strips: the lengths tried, the plan, and its shorter strips. */
public record StraightFinding(
    List<StraightTrial> trials,
    Optional<StraightPlan> plan,
    List<LaneStrip> strips,
    List<OddPiece> odd) {

  public static StraightFinding of(StraightCutting cutting, boolean can, SearchReach reach) {
    List<StraightTrial> trials = can ? cutting.trials(reach) : List.of();
    Optional<StraightTrial> found = Halving.shortest(trials);
    List<LaneStrip> strips =
        found.map(cutting::strips).orElse(Collections.nCopies(Lane.MOST, LaneStrip.NONE));
    List<OddPiece> odd =
        OddPiece.sorted(strips.stream().mapToDouble(LaneStrip::piece), cutting.join());
    return new StraightFinding(
        trials, found.map(trial -> StraightPlan.of(cutting, trials, trial, odd)), strips, odd);
  }
}
