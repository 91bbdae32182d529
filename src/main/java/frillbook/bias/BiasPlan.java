package frillbook.bias;

import frillbook.cutting.CushionStrips;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.LengthFound;
import frillbook.cutting.OddPiece;
import frillbook.cutting.Pieces;
import frillbook.cutting.StripsCut;
import frillbook.strip.Join;
import java.util.List;

/**
 * The shortest fabric for bias strips and how it is laid out.
 *
 * @param stripLength of a full strip
 * @param cushion strips of one cushion, where each has its own
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
 * @param lone number of the shorter strip that is joined without its partner, from 1; 0 for none
 * @param served shorter strips that serve as a cushion's last, where each has its own
 */
public record BiasPlan(
    LengthFound length,
    double stripLength,
    CushionStrips cushion,
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
    int lone,
    int served,
    StripsCut cut)
    implements GrainPlan {

  static BiasPlan of(
      BiasCutting cutting, List<BiasTrial> trials, BiasTrial found, List<BiasOdd> odd) {
    Pieces pieces = cutting.pieces();
    Join join = cutting.join();
    BiasComb comb = found.better();
    boolean line = found.usesLine();
    BiasSetting setting = cutting.setting();
    int past = found.lineStrips(setting);
    PairedStrips pairs = PairedStrips.of(found, setting, cutting.lineStep());
    int full = Math.max(0, comb.laneCount() - comb.nearShort() - comb.farShort() - past);
    CushionStrips cushion = CushionStrips.of(pieces, join, comb.fullStrip());
    int served =
        Math.min(pieces.cushions(), cushion.serving(odd.stream().map(BiasOdd::piece).toList()));
    StripsCut cut =
        pieces.ownStrips()
            ? StripsCut.own(pieces, cushion, served)
            : joined(cutting, comb, full, odd);
    return new BiasPlan(
        LengthFound.of(cutting.fabric(), pieces, join, trials, found),
        comb.fullStrip(),
        cushion,
        found.usesCorners(),
        line,
        line ? setting.lineCount() : 0,
        past,
        line ? comb.near() + comb.nearShort() * cutting.lineStep() : 0,
        line ? comb.room(setting) : 0,
        found.cornerDiscs(setting),
        found.band(setting),
        comb.longer(),
        comb.shorter(),
        comb.waist(),
        comb.near(),
        comb.far(),
        comb.nearSlack(cutting, found.cornerDiscs(setting)),
        comb.farSlack(cutting, found.cornerDiscs(setting)),
        comb.laneCount(),
        comb.nearShort(),
        comb.farShort(),
        pairs.count(),
        pairs.nearBefore(),
        pairs.farBefore(),
        full,
        BiasOdd.lone(odd, cut.run().odd()),
        served,
        cut);
  }

  private static StripsCut joined(BiasCutting cutting, BiasComb comb, int full, List<BiasOdd> odd) {
    List<OddPiece> ready = odd.stream().map(BiasOdd::ready).toList();
    double strip = comb.fullStrip();
    return StripsCut.of(cutting.pieces(), cutting.join(), full, strip, strip, ready);
  }
}
