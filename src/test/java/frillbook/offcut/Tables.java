package frillbook.offcut;

import frillbook.Filled;
import frillbook.bias.BiasOdd;
import frillbook.bias.BiasPlan;
import frillbook.bias.BiasSetting;
import frillbook.bias.CornerStrips;
import frillbook.bias.PastDisc;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.LengthFound;
import frillbook.cutting.OddPiece;
import frillbook.cutting.SearchReach;
import frillbook.cutting.StripsCut;
import frillbook.cutting.Tally;
import frillbook.discs.DiscSizes;
import frillbook.grains.GrainPlans;
import frillbook.grains.OddRow;
import frillbook.straight.DiscColumns;
import frillbook.straight.DiscLanes;
import frillbook.straight.Lane;
import frillbook.straight.LaneRow;
import frillbook.straight.LaneStrip;
import frillbook.straight.OwnStrips;
import frillbook.straight.StraightPlan;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Fabrics that are laid out already, with strips 2 wide and discs of 10. */
public final class Tables {
  private static final double STRIP_WIDTH = 2;

  private Tables() {}

  /** Full strips that are cut, and how many of the shorter ones. */
  public static StripsCut cut(int full, int odd) {
    Tally all = new Tally(0, full, 0, odd, full + odd);
    return new StripsCut(all, all, full + odd - 1);
  }

  public static LengthFound length(double usable) {
    return Filled.of(LengthFound.class, Map.of("usableLength", usable));
  }

  /** A lane for each of {@code crosswise}, and the same strips turned round lengthwise. */
  public static List<LaneRow> lanes(double... crosswise) {
    return IntStream.range(0, crosswise.length)
        .mapToObj(
            i ->
                new LaneRow(
                    Filled.of(Lane.class, Map.of("laneNo", i + 1)),
                    strip(crosswise[i]),
                    strip(crosswise[crosswise.length - 1 - i])))
        .toList();
  }

  private static LaneStrip strip(double piece) {
    return Filled.of(LaneStrip.class, Map.of("piece", piece));
  }

  public static OnTable straight(
      Grain grain, double width, int discs, StraightPlan plan, List<LaneRow> lanes, double... odd) {
    return laid(grain, width, discs, plan, Map.of("lanes", lanes, "odds", odds(odd)), 0);
  }

  /** Fabric 50 wide, cut lines 3 apart along its edge, three discs side by side in a band. */
  public static OnTable bias(int discs, BiasPlan plan, List<CornerStrips> corners, double... odd) {
    BiasSetting setting = Filled.of(BiasSetting.class, Map.of("perBand", 3));
    Map<String, Object> values =
        Map.of(
            "corners", corners, "odds", odds(odd), "biasSetting", setting, "lanes", lanes(20, 30));
    return laid(Grain.BIAS, 50, discs, plan, values, 3);
  }

  /** Shorter strips of any grain. */
  public static List<OddRow> odds(double... longestFirst) {
    return Arrays.stream(longestFirst)
        .mapToObj(
            odd ->
                Filled.of(
                    OddRow.class,
                    Map.of(
                        "crosswise",
                        new OddPiece(0, 0),
                        "lengthwise",
                        new OddPiece(0, 0),
                        "bias",
                        new BiasOdd(0, 0, 0, 0),
                        "oddPiece",
                        odd)))
        .toList();
  }

  /** Strips past a line of discs, of which a disc takes so much. */
  public static List<PastDisc> past(double... takes) {
    return Arrays.stream(takes).mapToObj(Tables::pastDisc).toList();
  }

  private static PastDisc pastDisc(double takes) {
    Map<String, Object> values = new HashMap<>();
    values.put("pastTakes", takes);
    values.put("one", null);
    values.put("two", null);
    return Filled.of(PastDisc.class, values);
  }

  /**
   * @param layouts components of {@link GrainPlans} that matter
   */
  public static OnTable laid(
      Grain grain,
      double width,
      int discs,
      GrainPlan plan,
      Map<String, Object> layouts,
      double lineStep) {
    DiscSizes sizes =
        Filled.of(DiscSizes.class, Map.of("matchingDiscCount", discs, "baseCutDiameter", 10.0));
    return new OnTable(grain, layouts(layouts), plan, sizes, width, STRIP_WIDTH, lineStep);
  }

  private static GrainPlans layouts(Map<String, Object> values) {
    var block = new DiscColumns.Block(0, 0);
    Map<String, Object> all = new HashMap<>();
    all.put("reach", new SearchReach(1, 1));
    all.put("discLanes", Filled.of(DiscLanes.class, Map.of()));
    all.put("discColumns", new DiscColumns(1, 1, block, block));
    all.put("ownStrips", new OwnStrips(1, List.of(), 0));
    all.put("crosswiseCushion", CushionStrips.alike(1, 1));
    all.put("lengthwiseCushion", CushionStrips.alike(1, 1));
    all.put("biasSetting", Filled.of(BiasSetting.class, Map.of()));
    all.putAll(values);
    return Filled.of(GrainPlans.class, all);
  }
}
