package frillbook.picture;

import frillbook.bias.CornerStrips;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One of the nine kinds of shorter strips that bias fabric has: in either corner, on either side of
 * the disc in either corner, past a line of discs, and in either corner again those in pairs. Which
 * of them are cut, where some are equally long, is settled in this order.
 *
 * @param sideAbove strips here that are longer than the shortest that is cut
 * @param sideReach those that are at least as long
 * @param sideTies strips of just that length still to be picked when the turn comes here
 * @param sideCut strips cut here
 */
public record FabricSide(int sideAbove, int sideReach, int sideTies, int sideCut) {
  private static final List<ToDoubleFunction<CornerStrips>> SIDES =
      List.of(
          CornerStrips::nearLane,
          CornerStrips::farLane,
          CornerStrips::nearRight,
          CornerStrips::nearLeft,
          CornerStrips::farRight,
          CornerStrips::farLeft,
          CornerStrips::pastPiece,
          CornerStrips::nearPair,
          CornerStrips::farPair);

  static final int NEAR_LANE = 0;
  static final int FAR_LANE = 1;
  static final int NEAR_RIGHT = 2;
  static final int NEAR_LEFT = 3;
  static final int FAR_RIGHT = 4;
  static final int FAR_LEFT = 5;
  static final int NEAR_PAIR = 7;
  static final int FAR_PAIR = 8;

  static List<FabricSide> all(CutFabric fabric) {
    List<FabricSide> sides = new ArrayList<>();
    int ties = fabric.oddTies();
    for (ToDoubleFunction<CornerStrips> side : SIDES) {
      FabricSide next = of(fabric, side, ties);
      sides.add(next);
      ties -= next.sideCut() - next.sideAbove();
    }
    return List.copyOf(sides);
  }

  private static FabricSide of(CutFabric fabric, ToDoubleFunction<CornerStrips> side, int ties) {
    if (!fabric.isBias() || fabric.cut().odd() == 0) {
      return new FabricSide(0, 0, ties, 0);
    }
    double[] pieces = fabric.corners().stream().mapToDouble(side).toArray();
    int above = (int) Arrays.stream(pieces).filter(fabric::isLonger).count();
    int reach = (int) Arrays.stream(pieces).filter(fabric::reaches).count();
    return new FabricSide(above, reach, ties, above + Math.max(0, Math.min(reach - above, ties)));
  }
}
