package frillbook.straight;

import frillbook.cutting.Fabric;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.StripsCut;
import java.util.List;

/**
 * The shortest fabric for straight strips and how it is laid out.
 *
 * @param steps buy steps bought
 * @param buyLength the length bought
 * @param lowerBound area of the pieces over usable width, in buy steps rounded up: no plan can do
 *     with less
 * @param ratio bought over lower bound
 * @param row of the trial that found it
 * @param usableLength left of the bought length after washing
 * @param stripLength of a full strip
 * @param isStacked whether lines hold as few discs as fit
 * @param perLine discs in a line
 * @param lines lines of discs
 * @param full full strips that fit
 * @param laneCount lanes beside the discs
 * @param whole of these, the lanes beside whole lines
 * @param reachWhole length left past the centre of the last disc of a whole line
 * @param reachLast the same in the last line
 */
public record StraightPlan(
    int steps,
    double buyLength,
    double lowerBound,
    double ratio,
    int row,
    double usableLength,
    double stripLength,
    boolean isStacked,
    int perLine,
    int lines,
    int full,
    int laneCount,
    int whole,
    double reachWhole,
    double reachLast,
    StripsCut cut)
    implements GrainPlan {

  static StraightPlan of(StraightCutting cutting, List<StraightTrial> trials, StraightTrial found) {
    Fabric fabric = cutting.fabric();
    Comb comb = found.better();
    Lanes lanes = cutting.lanes(found);
    double buy = found.tried() * fabric.buyStep();
    double bound = fabric.lowerBound(cutting.pieces(), cutting.join());
    double run = lanes.sheet().run();
    return new StraightPlan(
        found.tried(),
        buy,
        bound,
        buy / bound,
        trials.indexOf(found) + 1,
        found.usable(),
        run,
        found.isStacked(),
        comb.perLine(),
        comb.lines(),
        comb.full(),
        comb.laneCount(),
        comb.whole(),
        lanes.reachOfWhole(),
        lanes.reachOfLast(),
        StripsCut.of(cutting.pieces(), cutting.join(), comb.full(), run, cutting.odd(found)));
  }
}
