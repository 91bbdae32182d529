package frillbook.picture;

import frillbook.bias.CornerStrips;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One of the six places where bias cloth has shorter strips: either corner, and either side of the
 * disc in either corner. Which of them are cut, where some are equally long, is settled in this
 * order.
 *
 * @param sideAbove strips here that are longer than the shortest that is cut
 * @param sideReach those that are at least as long
 * @param sideTies strips of just that length still to be picked when the turn comes here
 * @param sideCut strips cut here
 */
public record ClothSide(int sideAbove, int sideReach, int sideTies, int sideCut) {
  private static final List<ToDoubleFunction<CornerStrips>> SIDES =
      List.of(
          CornerStrips::nearLane,
          CornerStrips::farLane,
          CornerStrips::nearRight,
          CornerStrips::nearLeft,
          CornerStrips::farRight,
          CornerStrips::farLeft);

  static final int NEAR_LANE = 0;
  static final int FAR_LANE = 1;
  static final int NEAR_RIGHT = 2;
  static final int NEAR_LEFT = 3;
  static final int FAR_RIGHT = 4;
  static final int FAR_LEFT = 5;

  static List<ClothSide> all(CutCloth cloth) {
    List<ClothSide> sides = new ArrayList<>();
    int ties = cloth.oddTies();
    for (ToDoubleFunction<CornerStrips> side : SIDES) {
      ClothSide next = of(cloth, side, ties);
      sides.add(next);
      ties -= next.sideCut() - next.sideAbove();
    }
    return List.copyOf(sides);
  }

  private static ClothSide of(CutCloth cloth, ToDoubleFunction<CornerStrips> side, int ties) {
    if (!cloth.isBias() || cloth.cut().odd() == 0) {
      return new ClothSide(0, 0, ties, 0);
    }
    double[] pieces = cloth.corners().stream().mapToDouble(side).toArray();
    int above = (int) Arrays.stream(pieces).filter(cloth::isLonger).count();
    int reach = (int) Arrays.stream(pieces).filter(cloth::reaches).count();
    return new ClothSide(above, reach, ties, above + Math.max(0, Math.min(reach - above, ties)));
  }
}
