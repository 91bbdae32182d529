package frillbook.straight;

import frillbook.cutting.GrainPlan;
import frillbook.cutting.LengthFound;
import frillbook.cutting.OddPiece;
import frillbook.cutting.Pieces;
import frillbook.cutting.StripsCut;
import frillbook.strip.Join;
import java.util.List;

/**
 * The shortest fabric for straight strips and how it is laid out.
 *
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
    LengthFound length,
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

  static StraightPlan of(
      StraightCutting cutting,
      List<StraightTrial> trials,
      StraightTrial found,
      List<OddPiece> odd) {
    Pieces pieces = cutting.pieces();
    Join join = cutting.join();
    Comb comb = found.better();
    Lanes lanes = cutting.lanes(found);
    double run = lanes.sheet().run();
    return new StraightPlan(
        LengthFound.of(cutting.fabric(), pieces, join, trials, found),
        run,
        found.isStacked(),
        comb.perLine(),
        comb.lines(),
        comb.full(),
        comb.laneCount(),
        comb.whole(),
        lanes.reachOfWhole(),
        lanes.reachOfLast(),
        StripsCut.of(pieces, join, comb.full(), run, odd));
  }
}
