package frillbook.straight;

import frillbook.cutting.CushionStrips;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.LengthFound;
import frillbook.cutting.OddPiece;
import frillbook.cutting.Pieces;
import frillbook.cutting.StripsCut;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;

/**
 * The shortest fabric for straight strips and how it is laid out.
 *
 * @param stripLength of a full strip
 * @param isStacked whether lines hold as few discs as fit
 * @param isApart whether two discs lie at either end of the strips, side by side
 * @param isZigzag whether they lie there in zigzag
 * @param perLine discs in a line
 * @param lines lines of discs
 * @param full full strips that fit
 * @param laneCount lanes beside the discs
 * @param whole of these, the lanes beside whole lines
 * @param perLane full strips end to end in one lane
 * @param moreWhole the same beside a whole line of discs
 * @param moreLast the same beside the last line
 * @param offered full strips in all
 * @param rimsTaken discs at whose rims a shorter strip ends
 * @param reachWhole length left past the centre of the last disc of a whole line
 * @param reachLast the same in the last line
 * @param served shorter strips that serve as a cushion's last, where each has its own
 */
public record StraightPlan(
    LengthFound length,
    double stripLength,
    boolean isStacked,
    boolean isApart,
    boolean isZigzag,
    int perLine,
    int lines,
    int full,
    int laneCount,
    int whole,
    int perLane,
    int moreWhole,
    int moreLast,
    int offered,
    int rimsTaken,
    double reachWhole,
    double reachLast,
    int served,
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
    double strip = found.strip();
    int perLane = lanes.perLane();
    int offered = comb.full() * perLane + lanes.more();
    double spare = Math.min(strip, cutting.fabric().usableWidth());
    CushionStrips cushion = cutting.cushion();
    int served = Math.min(pieces.cushions(), cushion.serving(odd));
    StripsCut cut =
        pieces.ownStrips()
            ? StripsCut.own(pieces, cushion, served)
            : StripsCut.of(pieces, join, offered, strip, spare, odd);
    return new StraightPlan(
        LengthFound.of(cutting.fabric(), pieces, join, trials, found),
        strip,
        found.isStacked(),
        found.spread() == Spread.APART,
        found.spread() == Spread.ZIGZAG,
        comb.perLine(),
        comb.lines(),
        comb.full(),
        comb.laneCount(),
        comb.whole(),
        perLane,
        comb.moreWhole(),
        comb.moreLast(),
        offered,
        lanes.rims(),
        lanes.reachOfWhole(),
        lanes.reachOfLast(),
        served,
        cut);
  }

  /** Lanes of full strips that no strip is cut from. */
  public int lanesUncut() {
    return Math.max(0, full - Rounding.up((double) cut.all().full() / perLane));
  }
}
