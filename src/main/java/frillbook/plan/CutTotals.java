package frillbook.plan;

import frillbook.bias.BiasPlan;
import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.StripsCut;
import frillbook.grains.FrillCutting;
import frillbook.grains.GrainPlans;
import frillbook.measure.Rounding;
import frillbook.straight.Lane;
import frillbook.straight.StraightPlan;
import frillbook.strip.Join;
import frillbook.strip.StripLength;
import java.util.stream.IntStream;

/**
 * What is cut from the frill fabric in the chosen grain, for the whole order.
 *
 * @param stripLength cut length of a full strip
 * @param joinLoss length lost at every join
 * @param fullCount full strips cut
 * @param oddCount shorter strips cut
 * @param stripCount strips cut, spares included
 * @param runCount of these, the strips joined into the run; the others are spare
 * @param joinCount joins in the run
 * @param shortestCut cut length of the shortest strip cut
 * @param joinedLength of the run
 * @param buyLength fabric to buy
 * @param fabricLowerBound area of the pieces over the usable width, rounded up to the buy step
 * @param fabricRatio bought over lower bound
 * @param firstStripLength cut length of the longest strip that is cut
 * @param stripsEach strips of one joined strip
 * @param joinsEach joins of one joined strip
 * @param lastStripLength the last strip of a cushion, where each has its own; 0 for none
 * @param lastFromFull full strips that are cut up for these
 * @param loneLength what a strip of a pair that is joined without its partner is recut to; 0 for
 *     none
 * @param joinsPlaced joins of one joined strip that fall in a cushion; the others lie past the last
 * @param joinsPast those others, which are sewn only if the strip falls short
 * @param joinedSlack what a joined strip is longer than needed
 * @param joinsUnlisted joins beyond those that are listed
 * @param discsPerLine discs in a line at most, on straight grain; 0 on the bias
 * @param discLines lines of discs, on straight grain; 0 on the bias
 * @param lanesUnseen lanes beside discs on straight grain that no shorter strip is looked for in
 * @param discsApart whether the two discs on straight grain lie one at either end of the strips
 * @param discsZigzag whether the second lies at the far selvage besides
 * @param firstMark where the first cut line meets the edge
 * @param markStep from one cut line to the next along the edge
 * @param lastMark where the last cut line on the bias meets the edges, from the far corner
 * @param nearDiscPush how far a disc in the near corner is moved in along each edge
 * @param discPush the same in the far corner
 * @param cornerPairs bias strips of the near corner that are joined to one of the far corner
 * @param nearUnpaired strips between the near corner and the first of these
 * @param farUnpaired the same in the far corner
 * @param lineMatchingDiscs matching discs in a line along a long edge, on the bias
 * @param lineMark where the cut line that touches the first of them meets both edges; 0 for none
 * @param lanesUncut lanes between the last full strip and the matching discs, on straight grain
 * @param matchingDiscStart where lines of matching discs begin: from the edge the strips start at,
 *     on the bias from the end of the fabric that is laid out first; 0 where there are none
 */
public record CutTotals(
    double stripLength,
    double joinLoss,
    int fullCount,
    int oddCount,
    int stripCount,
    int runCount,
    int joinCount,
    double shortestCut,
    double joinedLength,
    double buyLength,
    double fabricLowerBound,
    double fabricRatio,
    double firstStripLength,
    int stripsEach,
    int joinsEach,
    double lastStripLength,
    int lastFromFull,
    double loneLength,
    int joinsPlaced,
    int joinsPast,
    double joinedSlack,
    int joinsUnlisted,
    int discsPerLine,
    int discLines,
    int lanesUnseen,
    boolean discsApart,
    boolean discsZigzag,
    double firstMark,
    double markStep,
    double lastMark,
    double nearDiscPush,
    double discPush,
    int cornerPairs,
    int nearUnpaired,
    int farUnpaired,
    int lineMatchingDiscs,
    double lineMark,
    int lanesUncut,
    double matchingDiscStart) {

  static CutTotals of(
      Brief brief,
      Sizes sizes,
      StripLength strip,
      FrillCutting cutting,
      GrainPlans layouts,
      GrainPlan plan) {
    Grain grain = brief.fabric().grain();
    boolean isBias = grain == Grain.BIAS;
    Join join = cutting.join(grain);
    StripsCut cut = plan.cut();
    boolean own = brief.ownStrips();
    int quantity = brief.cushion().quantity();
    CushionStrips cushion = layouts.cushion(grain);
    int each = own ? cushion.each() : cut.run().count();
    double net =
        own
            ? (each - 1) * join.net(plan.stripLength()) + join.net(cushion.last())
            : layouts.netOf(each, plan, join);
    double joined = net + join.loss();
    int placed =
        own || quantity == 1
            ? each - 1
            : joinsWithin(strip.orderFlatLength(), each - 1, layouts, plan, join);
    return new CutTotals(
        plan.stripLength(),
        join.loss(),
        cut.all().full(),
        cut.all().odd(),
        cut.all().count(),
        cut.run().count(),
        cut.joinCount(),
        layouts.shortestStrip(plan),
        joined,
        plan.buyLength(),
        plan.length().lowerBound(),
        plan.length().ratio(),
        cut.all().full() > 0 ? plan.stripLength() : layouts.odds().get(0).oddPiece(),
        each,
        each - 1,
        own ? cushion.last() : 0,
        own ? cushion.fromFull(quantity, cut.all().odd()) : 0,
        loneLength(plan, layouts, sizes),
        placed,
        each - 1 - placed,
        joined - (own ? strip.flatLength() : strip.orderFlatLength()),
        Math.max(0, placed - JoinPlace.MOST),
        plan instanceof StraightPlan straight ? straight.perLine() : 0,
        plan instanceof StraightPlan straight ? straight.lines() : 0,
        plan instanceof StraightPlan straight ? Math.max(0, straight.laneCount() - Lane.MOST) : 0,
        plan instanceof StraightPlan straight && straight.isApart(),
        plan instanceof StraightPlan straight && straight.isZigzag(),
        isBias ? layouts.bias().orElseThrow().near() : sizes.strip().stripCutWidth(),
        isBias ? sizes.cutLineStep() : sizes.strip().stripCutWidth(),
        plan instanceof BiasPlan bias ? bias.far() : 0,
        plan instanceof BiasPlan bias && bias.cornerDiscs() >= 1 ? bias.nearSlack() / 2 : 0,
        plan instanceof BiasPlan bias && bias.cornerDiscs() >= 2 ? bias.farSlack() / 2 : 0,
        plan instanceof BiasPlan bias ? bias.pairs() : 0,
        plan instanceof BiasPlan bias ? bias.nearBefore() : 0,
        plan instanceof BiasPlan bias ? bias.farBefore() : 0,
        plan instanceof BiasPlan bias ? bias.lineDiscs() : 0,
        plan instanceof BiasPlan bias ? bias.lineFirst() : 0,
        plan instanceof StraightPlan straight && sizes.discs().matchingDiscCount() > 0
            ? straight.lanesUncut()
            : 0,
        matchingDiscStart(plan, sizes));
  }

  /** Strips of each cushion may take two fifths more than the pieces' area, and two shop steps. */
  boolean isLean(Brief brief) {
    double steps = (buyLength - fabricLowerBound) / brief.fabric().buyStep();
    return !brief.ownStrips()
        || Rounding.settle(fabricRatio - 1.4) <= 0
        || Rounding.settle(steps - 2) <= 0;
  }

  private static int joinsWithin(
      double length, int joins, GrainPlans layouts, GrainPlan plan, Join join) {
    return (int)
        IntStream.rangeClosed(1, joins)
            .mapToDouble(n -> JoinPlace.seam(n, layouts, plan, join))
            .filter(seam -> Rounding.settle(length - seam) >= 0)
            .count();
  }

  private static double loneLength(GrainPlan plan, GrainPlans layouts, Sizes sizes) {
    return plan instanceof BiasPlan bias && bias.lone() > 0
        ? layouts.odds().get(bias.lone() - 1).oddPiece() - sizes.strip().stripCutWidth()
        : 0;
  }

  private static double matchingDiscStart(GrainPlan plan, Sizes sizes) {
    int matchingDiscs = sizes.discs().matchingDiscCount();
    if (plan instanceof BiasPlan bias) {
      return matchingDiscs > bias.cornerDiscs() + bias.lineDiscs()
          ? bias.usableLength() - bias.bandLength()
          : 0;
    }
    return plan instanceof StraightPlan straight && matchingDiscs > 0
        ? straight.full() * sizes.strip().stripCutWidth()
        : 0;
  }
}
