package frillbook.offcut;

import frillbook.bias.BiasPlan;
import frillbook.bias.CornerStrips;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What bias strips and matching discs leave of their fabric; all 0 on straight grain.
 *
 * @param nearLeg how far the bare triangle in the corner that the cut lines start in reaches along
 *     both edges; 0 where a disc lies in it
 * @param farCut strips of the corner they end in that may be cut, those beside a disc left out
 * @param farLeg the same as {@code nearLeg} in that corner
 * @param bandDiscs discs in bands across the end of the fabric
 * @param bandLast of these, the discs in the last line
 */
public record BiasRoom(double nearLeg, int farCut, double farLeg, int bandDiscs, int bandLast) {

  static BiasRoom of(OnTable table) {
    if (!table.isBias()) {
      return new BiasRoom(0, 0, 0, 0, 0);
    }
    BiasPlan plan = table.bias();
    int discs = table.discs() - plan.cornerDiscs() - plan.lineDiscs();
    int inBand = table.layouts().biasSetting().perBand();
    int lines = Rounding.up((double) discs / inBand);
    int farCut = cut(table, CornerStrips::farLane) + cut(table, CornerStrips::farPair);
    return new BiasRoom(
        plan.cornerDiscs() >= 1 ? 0 : nearLeg(table, plan),
        farCut,
        plan.cornerDiscs() >= 2 ? 0 : farLeg(table, plan, farCut),
        discs,
        discs == 0 ? 0 : discs - (lines - 1) * inBand);
  }

  private static double nearLeg(OnTable table, BiasPlan plan) {
    int cut = cut(table, CornerStrips::nearLane) + cut(table, CornerStrips::nearPair);
    return plan.near() + (plan.nearShort() - cut) * table.lineStep();
  }

  /** Where no strip of the corner is cut, the full strips before it that are not cut count too. */
  private static double farLeg(OnTable table, BiasPlan plan, int cut) {
    int offered = Math.min(plan.farShort(), plan.laneCount() - plan.nearShort());
    int full = cut == 0 ? plan.full() - table.full() : 0;
    return plan.far() + (offered - cut + full) * table.lineStep();
  }

  /** Strips of one side that may be cut. */
  private static int cut(OnTable table, ToDoubleFunction<CornerStrips> side) {
    return (int)
        table.layouts().corners().stream().mapToDouble(side).filter(table::mayBeCut).count();
  }

  /** Rectangles that may be left, in the order of {@link Place}. */
  List<Leftover> leftovers(OnTable table) {
    BiasPlan plan = table.bias();
    double diameter = table.diameter();
    int inBand = table.layouts().biasSetting().perBand();
    double width = table.usableWidth();
    return List.of(
        inCorner(Place.NEAR_CORNER, nearLeg, plan, width),
        inCorner(Place.FAR_CORNER, farLeg, plan, width),
        Leftover.of(Place.LAST_BAND, bandDiscs > 0 ? diameter : 0, width - bandLast * diameter),
        Leftover.of(Place.BANDS, plan.bandLength(), width - inBand * diameter));
  }

  /** A square, or what has the whole shorter side where half the leg is longer than that. */
  private static Leftover inCorner(Place place, double leg, BiasPlan plan, double width) {
    double across = Math.min(leg / 2, plan.shorter());
    double along = Math.max(leg / 2, leg - plan.shorter());
    boolean isShort = width > plan.shorter() + Rounding.TINY;
    return Leftover.of(place, isShort ? across : along, isShort ? along : across);
  }
}
