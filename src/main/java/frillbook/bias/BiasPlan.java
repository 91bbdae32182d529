package frillbook.bias;

import frillbook.cutting.Fabric;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.OddPiece;
import frillbook.cutting.StripsCut;
import java.util.List;

/**
 * The shortest fabric for bias strips and how it is laid out.
 *
 * @param steps buy steps bought
 * @param buyLength the length bought
 * @param lowerBound area of the pieces over usable width, in buy steps rounded up
 * @param ratio bought over lower bound
 * @param row of the trial that found it
 * @param usableLength left of the bought length after washing
 * @param stripLength of a full strip
 * @param usesCorners whether discs stand in the right-angled corners
 * @param usesLine whether discs lie in a line along a long edge, in place of corners
 * @param lineDiscs discs in that line
 * @param lineStrips strips cut past them
 * @param lineFirst where the cut line that touches the first of them meets both edges
 * @param pastRoom as in {@link PastPieces#room()}
 * @param cornerDiscs discs in the right-angled corners
 * @param bandLength of the straight bands at the end that hold the other discs
 * @param longer longer side of the fabric the strips are cut from
 * @param shorter shorter side
 * @param waist the shorter side, less what square ends take
 * @param near inner cut line of the first strip, from the near corner
 * @param far the same from the far corner
 * @param nearSlack how far the near disc may be pushed out of its corner
 * @param farSlack the same for the far disc
 * @param laneCount strips between the corners
 * @param nearShort strips shorter than full in the near corner
 * @param farShort the same in the far corner
 * @param pairs strips of the near corner that are joined to one of the far corner
 * @param nearBefore strips between the near corner and the first of these
 * @param farBefore the same in the far corner
 * @param full full strips
 */
public record BiasPlan(
    int steps,
    double buyLength,
    double lowerBound,
    double ratio,
    int row,
    double usableLength,
    double stripLength,
    boolean usesCorners,
    boolean usesLine,
    int lineDiscs,
    int lineStrips,
    double lineFirst,
    double pastRoom,
    int cornerDiscs,
    double bandLength,
    double longer,
    double shorter,
    double waist,
    double near,
    double far,
    double nearSlack,
    double farSlack,
    int laneCount,
    int nearShort,
    int farShort,
    int pairs,
    int nearBefore,
    int farBefore,
    int full,
    StripsCut cut)
    implements GrainPlan {

  static BiasPlan of(BiasCutting cutting, List<BiasTrial> trials, BiasTrial found) {
    BiasComb comb = found.better();
    Fabric fabric = cutting.fabric();
    boolean line = found.usesLine();
    BiasSetting setting = cutting.setting();
    int past = found.lineStrips(setting);
    PairedStrips pairs = PairedStrips.of(found, setting, cutting.lineStep());
    double buy = found.tried() * fabric.buyStep();
    double bound = fabric.lowerBound(cutting.pieces(), cutting.join());
    int full = Math.max(0, comb.laneCount() - comb.nearShort() - comb.farShort() - past);
    List<OddPiece> odd =
        cutting.odd(cutting.cornerStrips(found)).stream().map(BiasOdd::ready).toList();
    return new BiasPlan(
        found.tried(),
        buy,
        bound,
        buy / bound,
        trials.indexOf(found) + 1,
        found.usable(),
        comb.fullStrip(),
        found.usesCorners(),
        line,
        line ? setting.lineCount() : 0,
        past,
        line ? comb.near() + comb.nearShort() * cutting.lineStep() : 0,
        line ? found.past().room() : 0,
        found.cornerDiscs(setting),
        found.band(setting),
        comb.longer(),
        comb.shorter(),
        comb.waist(),
        comb.near(),
        comb.far(),
        comb.nearSlack(),
        comb.farSlack(),
        comb.laneCount(),
        comb.nearShort(),
        comb.farShort(),
        pairs.count(),
        pairs.nearBefore(),
        pairs.farBefore(),
        full,
        StripsCut.of(cutting.pieces(), cutting.join(), full, comb.fullStrip(), odd));
  }
}
