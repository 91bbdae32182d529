package frillbook.picture;

import frillbook.bias.BiasPlan;
import frillbook.straight.StraightPlan;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The centre of a disc on the frill fabric; all 0 where there is none.
 *
 * @param fabricDiscRun along the strips, on the bias along the longer side; in the unit of the
 *     brief
 * @param fabricDiscStack across them
 * @param fabricDiscX along the selvage; 1 is the height of the picture
 * @param fabricDiscY across the fabric
 */
public record FabricDisc(
    double fabricDiscRun, double fabricDiscStack, double fabricDiscX, double fabricDiscY) {
  private static final FabricDisc NONE = new FabricDisc(0, 0, 0, 0);

  static List<FabricDisc> all(CutFabric fabric) {
    return IntStream.range(0, DrawnPieces.MOST).mapToObj(i -> of(fabric, i)).toList();
  }

  Spot centre() {
    return new Spot(fabricDiscX, fabricDiscY);
  }

  private static FabricDisc of(CutFabric fabric, int disc) {
    if (disc >= fabric.discs().matchingDiscCount()) {
      return NONE;
    }
    double radius = fabric.discs().baseCutDiameter() / 2;
    if (!fabric.isBias()) {
      return placed(inLine(fabric, disc, radius), fabric);
    }
    int inBand = disc - fabric.bias().cornerDiscs() - fabric.bias().lineDiscs();
    return placed(
        inBand < 0 ? outsideBands(fabric.bias(), disc, radius) : inBand(fabric, inBand, radius),
        fabric);
  }

  private static FabricDisc placed(Spot at, CutFabric fabric) {
    double scale = fabric.scale();
    return switch (fabric.turn()) {
      case 0 -> new FabricDisc(at.x(), at.y(), at.x() / scale, at.y() / scale);
      case 1 -> new FabricDisc(at.x(), at.y(), at.y() / scale, at.x() / scale);
      default -> new FabricDisc(at.x(), at.y(), at.y() / scale, (fabric.width() - at.x()) / scale);
    };
  }

  private static Spot inLine(CutFabric fabric, int disc, double radius) {
    StraightPlan plan = fabric.straight();
    int perLine = plan.perLine();
    double beyond = plan.full() * fabric.stripWidth();
    if (disc == 1 && (plan.isApart() || plan.isZigzag())) {
      double across = plan.isApart() ? beyond + radius : fabric.width() - radius;
      return new Spot(fabric.run() - radius, across);
    }
    return new Spot(
        (2 * (disc % perLine) + 1) * radius, beyond + (2 * (disc / perLine) + 1) * radius);
  }

  private static Spot outsideBands(BiasPlan plan, int disc, double radius) {
    return plan.usesLine()
        ? new Spot((2 * disc + 1) * radius, plan.shorter() - radius)
        : inCorner(plan, disc, radius);
  }

  private static Spot inCorner(BiasPlan plan, int disc, double radius) {
    double near = radius + plan.nearSlack() / 2;
    double far = radius + plan.farSlack() / 2;
    return disc == 0 ? new Spot(near, near) : new Spot(plan.longer() - far, plan.shorter() - far);
  }

  /** Bands lie across the end of the fabric whichever way the strips do. */
  private static Spot inBand(CutFabric fabric, int disc, double radius) {
    int perBand = fabric.layouts().biasSetting().perBand();
    double start = fabric.length() - fabric.bias().bandLength();
    double x = start + (2 * (disc / perBand) + 1) * radius;
    double y = (2 * (disc % perBand) + 1) * radius;
    return fabric.turn() == 0 ? new Spot(x, y) : new Spot(fabric.width() - y, x);
  }
}
