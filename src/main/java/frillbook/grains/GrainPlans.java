package frillbook.grains;

import frillbook.bias.BesideDisc;
import frillbook.bias.BiasFinding;
import frillbook.bias.BiasPlan;
import frillbook.bias.BiasSetting;
import frillbook.bias.BiasTrial;
import frillbook.bias.CornerStrips;
import frillbook.brief.Grain;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.OddPiece;
import frillbook.cutting.OddRow;
import frillbook.naming.Prefixed;
import frillbook.straight.Lane;
import frillbook.straight.LaneRow;
import frillbook.straight.StraightFinding;
import frillbook.straight.StraightPlan;
import frillbook.straight.StraightTrial;
import frillbook.strip.Join;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The frill cloth laid out in all three grains, with every length tried on the way.
 *
 * @param leastLength area of run and discs over the usable width
 * @param acrossNeed what the strips of the run must add up to across the cloth, spares left out
 * @param alongNeed the same along the cloth
 * @param biasNeed the same on the bias
 * @param searchRows rows the search for a length takes
 * @param lanes lanes beside discs on straight grain
 * @param beside bias strips divided by a disc in the corner
 * @param acrossFits whether a length of cloth was found; likewise the other grains
 * @param corners the shorter bias strips of the layout found
 * @param odds the shorter strips of every grain, longest first
 */
public record GrainPlans(
    double leastLength,
    double acrossNeed,
    double alongNeed,
    double biasNeed,
    int searchRows,
    List<LaneRow> lanes,
    List<BesideDisc> beside,
    @Prefixed("bias") BiasSetting biasSetting,
    @Prefixed("across") List<StraightTrial> acrossTrials,
    @Prefixed("along") List<StraightTrial> alongTrials,
    @Prefixed("bias") List<BiasTrial> biasTrials,
    boolean acrossFits,
    boolean alongFits,
    boolean biasFits,
    @Prefixed("across") Optional<StraightPlan> across,
    @Prefixed("along") Optional<StraightPlan> along,
    @Prefixed("bias") Optional<BiasPlan> bias,
    List<CornerStrips> corners,
    List<OddRow> odds) {

  /** The layouts of every grain that {@code starts} says the cloth is wide enough for. */
  public static GrainPlans of(FrillCutting cutting, GrainStarts starts, Grain chosen) {
    int rows = cutting.searchRows(starts);
    var across = StraightFinding.of(cutting.across(), starts.across().can(), rows);
    var along = StraightFinding.of(cutting.along(), starts.along().can(), rows);
    var bias = BiasFinding.of(cutting.bias(), starts.bias().can(), rows);
    return new GrainPlans(
        cutting.leastLength(),
        cutting.need(Grain.ACROSS),
        cutting.need(Grain.ALONG),
        cutting.need(Grain.BIAS),
        rows,
        laneRows(cutting, across, along),
        cutting.bias().beside(),
        cutting.bias().setting(),
        across.trials(),
        along.trials(),
        bias.trials(),
        across.plan().isPresent(),
        along.plan().isPresent(),
        bias.plan().isPresent(),
        across.plan(),
        along.plan(),
        bias.plan(),
        bias.corners(),
        oddRows(across.odd(), along.odd(), bias.odd(), chosen));
  }

  private static List<LaneRow> laneRows(
      FrillCutting cutting, StraightFinding across, StraightFinding along) {
    return IntStream.range(0, Lane.MOST)
        .mapToObj(
            i ->
                new LaneRow(
                    cutting.across().beside().get(i),
                    across.strips().get(i),
                    along.strips().get(i)))
        .toList();
  }

  private static List<OddRow> oddRows(
      List<OddPiece> across, List<OddPiece> along, List<OddPiece> bias, Grain chosen) {
    List<OddPiece> picked =
        switch (chosen) {
          case ACROSS -> across;
          case ALONG -> along;
          case BIAS -> bias;
        };
    return IntStream.range(0, OddPiece.MOST)
        .mapToObj(
            i ->
                new OddRow(
                    i + 1,
                    across.get(i),
                    along.get(i),
                    bias.get(i),
                    picked.get(i).odd(),
                    picked.get(i).oddJoined()))
        .toList();
  }

  /** The plan of {@code grain}; empty where the cloth is too narrow for it. */
  public Optional<GrainPlan> plan(Grain grain) {
    return switch (grain) {
      case ACROSS -> across.map(GrainPlan.class::cast);
      case ALONG -> along.map(GrainPlan.class::cast);
      case BIAS -> bias.map(GrainPlan.class::cast);
    };
  }

  /** Net length of the {@code count} longest strips of the chosen grain. */
  public double netOf(int count, GrainPlan plan, Join join) {
    int full = Math.min(count, plan.cut().all().full());
    double net = full * join.net(plan.stripLength());
    return count > full ? net + odds.get(count - full - 1).oddJoined() : net;
  }

  /** Cut lengths of the shorter strips the chosen grain uses. */
  public DoubleStream oddLengths(GrainPlan plan) {
    return odds.stream().limit(plan.cut().all().odd()).mapToDouble(OddRow::oddPiece);
  }
}
