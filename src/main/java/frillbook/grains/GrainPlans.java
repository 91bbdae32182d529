package frillbook.grains;

import frillbook.bias.BesideDisc;
import frillbook.bias.BiasFinding;
import frillbook.bias.BiasPlan;
import frillbook.bias.BiasSetting;
import frillbook.bias.BiasTrial;
import frillbook.bias.CornerStrips;
import frillbook.bias.PastDisc;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.OddPiece;
import frillbook.cutting.SearchReach;
import frillbook.naming.Prefixed;
import frillbook.straight.DiscColumns;
import frillbook.straight.DiscLanes;
import frillbook.straight.Lane;
import frillbook.straight.LaneRow;
import frillbook.straight.OwnStrips;
import frillbook.straight.StraightFinding;
import frillbook.straight.StraightPlan;
import frillbook.straight.StraightTrial;
import frillbook.strip.Join;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The frill fabric laid out in all three grains, with every length tried on the way.
 *
 * @param leastLength area of run and discs over the usable width
 * @param crosswiseNeed what the strips of the run must add up to across the fabric, spares left out
 * @param lengthwiseNeed the same along the fabric
 * @param biasNeed the same on the bias
 * @param reach of the search for a length
 * @param discLanes strips that discs touch
 * @param discColumns discs beside lengthwise strips that are all alike
 * @param ownStrips lengthwise strips where every cushion has its own
 * @param crosswiseCushion the strips of one such cushion, crosswise; likewise lengthwise
 * @param lanes lanes beside discs on straight grain
 * @param beside bias strips divided by a disc in the corner
 * @param past bias strips past a line of discs
 * @param crosswiseFits whether a length of fabric was found; likewise the other grains
 * @param corners the shorter bias strips of the layout found
 * @param odds the shorter strips of every grain, longest first
 */
public record GrainPlans(
    double leastLength,
    double crosswiseNeed,
    double lengthwiseNeed,
    double biasNeed,
    SearchReach reach,
    DiscLanes discLanes,
    DiscColumns discColumns,
    @Prefixed("lengthwise") OwnStrips ownStrips,
    @Prefixed("crosswise") CushionStrips crosswiseCushion,
    @Prefixed("lengthwise") CushionStrips lengthwiseCushion,
    List<LaneRow> lanes,
    List<BesideDisc> beside,
    List<PastDisc> past,
    @Prefixed("bias") BiasSetting biasSetting,
    @Prefixed("crosswise") List<StraightTrial> crosswiseTrials,
    @Prefixed("lengthwise") List<StraightTrial> lengthwiseTrials,
    @Prefixed("bias") List<BiasTrial> biasTrials,
    boolean crosswiseFits,
    boolean lengthwiseFits,
    boolean biasFits,
    @Prefixed("crosswise") Optional<StraightPlan> crosswise,
    @Prefixed("lengthwise") Optional<StraightPlan> lengthwise,
    @Prefixed("bias") Optional<BiasPlan> bias,
    List<CornerStrips> corners,
    List<OddRow> odds) {

  /** The layouts of every grain that {@code starts} says the fabric is wide enough for. */
  public static GrainPlans of(FrillCutting cutting, GrainStarts starts, Grain chosen) {
    SearchReach reach = cutting.reach(starts);
    var crosswise = StraightFinding.of(cutting.crosswise(), starts.crosswise().can(), reach);
    var lengthwise = StraightFinding.of(cutting.lengthwise(), starts.lengthwise().can(), reach);
    var bias = BiasFinding.of(cutting.bias(), starts.bias().can(), reach);
    return new GrainPlans(
        cutting.leastLength(),
        cutting.need(Grain.CROSSWISE),
        cutting.need(Grain.LENGTHWISE),
        cutting.need(Grain.BIAS),
        reach,
        DiscLanes.of(cutting.lengthwise().pieces(), cutting.lengthwise().fabric().usableWidth()),
        DiscColumns.of(cutting.lengthwise().pieces(), cutting.lengthwise().fabric().usableWidth()),
        cutting.lengthwise().own(),
        cutting.crosswise().cushion(),
        cutting.lengthwise().cushion(),
        laneRows(cutting, crosswise, lengthwise),
        cutting.bias().beside(),
        cutting.bias().past(),
        cutting.bias().setting(),
        crosswise.trials(),
        lengthwise.trials(),
        bias.trials(),
        crosswise.plan().isPresent(),
        lengthwise.plan().isPresent(),
        bias.plan().isPresent(),
        crosswise.plan(),
        lengthwise.plan(),
        bias.plan(),
        bias.corners(),
        oddRows(crosswise.odd(), lengthwise.odd(), bias, chosen));
  }

  private static List<LaneRow> laneRows(
      FrillCutting cutting, StraightFinding crosswise, StraightFinding lengthwise) {
    return IntStream.range(0, Lane.MOST)
        .mapToObj(
            i ->
                new LaneRow(
                    cutting.crosswise().beside().get(i),
                    crosswise.strips().get(i),
                    lengthwise.strips().get(i)))
        .toList();
  }

  private static List<OddRow> oddRows(
      List<OddPiece> crosswise, List<OddPiece> lengthwise, BiasFinding bias, Grain chosen) {
    List<OddPiece> picked =
        switch (chosen) {
          case CROSSWISE -> crosswise;
          case LENGTHWISE -> lengthwise;
          case BIAS -> bias.joined();
        };
    return IntStream.range(0, OddPiece.MOST)
        .mapToObj(
            i ->
                new OddRow(
                    i + 1,
                    crosswise.get(i),
                    lengthwise.get(i),
                    bias.odd().get(i),
                    picked.get(i).odd(),
                    picked.get(i).oddJoined()))
        .toList();
  }

  /** The plan of {@code grain}; empty where the fabric is too narrow for it. */
  public Optional<GrainPlan> plan(Grain grain) {
    return switch (grain) {
      case CROSSWISE -> crosswise.map(GrainPlan.class::cast);
      case LENGTHWISE -> lengthwise.map(GrainPlan.class::cast);
      case BIAS -> bias.map(GrainPlan.class::cast);
    };
  }

  /** The strips of one cushion in {@code grain}, where each has its own. */
  public CushionStrips cushion(Grain grain) {
    return switch (grain) {
      case CROSSWISE -> crosswiseCushion;
      case LENGTHWISE -> lengthwiseCushion;
      case BIAS -> bias.orElseThrow().cushion();
    };
  }

  /** Net length of the {@code count} longest strips of the chosen grain. */
  public double netOf(int count, GrainPlan plan, Join join) {
    int full = Math.min(count, plan.cut().all().full());
    double net = full * join.net(plan.stripLength());
    return count > full ? net + odds.get(count - full - 1).oddJoined() : net;
  }

  /** Cut length of the shortest strip that the chosen grain uses. */
  public double shortestStrip(GrainPlan plan) {
    return oddLengths(plan).min().orElse(plan.stripLength());
  }

  /** Cut lengths of the shorter strips the chosen grain uses. */
  public DoubleStream oddLengths(GrainPlan plan) {
    return odds.stream().limit(plan.cut().all().odd()).mapToDouble(OddRow::oddPiece);
  }
}
