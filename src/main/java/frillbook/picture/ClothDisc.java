package frillbook.picture;

import frillbook.bias.BiasPlan;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The centre of a disc on the frill cloth; all 0 where there is none.
 *
 * @param clothDiscRun along the strips, on the bias along the longer side; in the unit of the brief
 * @param clothDiscStack across them
 * @param clothDiscX along the selvage; 1 is the height of the picture
 * @param clothDiscY across the cloth
 */
public record ClothDisc(
    double clothDiscRun, double clothDiscStack, double clothDiscX, double clothDiscY) {
  private static final ClothDisc NONE = new ClothDisc(0, 0, 0, 0);

  static List<ClothDisc> all(CutCloth cloth) {
    return IntStream.range(0, Twelve.MOST).mapToObj(i -> of(cloth, i)).toList();
  }

  Spot centre() {
    return new Spot(clothDiscX, clothDiscY);
  }

  private static ClothDisc of(CutCloth cloth, int disc) {
    if (disc >= cloth.discs().overlayCount()) {
      return NONE;
    }
    double radius = cloth.discs().baseCutDiameter() / 2;
    if (!cloth.isBias()) {
      return placed(inLine(cloth, disc, radius), cloth);
    }
    int inBand = disc - cloth.bias().cornerDiscs();
    return placed(
        inBand < 0 ? inCorner(cloth.bias(), disc, radius) : inBand(cloth, inBand, radius), cloth);
  }

  private static ClothDisc placed(Spot at, CutCloth cloth) {
    double scale = cloth.scale();
    return switch (cloth.turn()) {
      case 0 -> new ClothDisc(at.x(), at.y(), at.x() / scale, at.y() / scale);
      case 1 -> new ClothDisc(at.x(), at.y(), at.y() / scale, at.x() / scale);
      default -> new ClothDisc(at.x(), at.y(), at.y() / scale, (cloth.width() - at.x()) / scale);
    };
  }

  private static Spot inLine(CutCloth cloth, int disc, double radius) {
    int perLine = cloth.straight().perLine();
    double beyond = cloth.straight().full() * cloth.stripWidth();
    return new Spot(
        (2 * (disc % perLine) + 1) * radius, beyond + (2 * (disc / perLine) + 1) * radius);
  }

  private static Spot inCorner(BiasPlan plan, int disc, double radius) {
    double near = radius + plan.nearSlack() / 2;
    double far = radius + plan.farSlack() / 2;
    return disc == 0 ? new Spot(near, near) : new Spot(plan.longer() - far, plan.shorter() - far);
  }

  /** Bands lie across the end of the cloth whichever way the strips do. */
  private static Spot inBand(CutCloth cloth, int disc, double radius) {
    int perBand = cloth.layouts().biasSetting().perBand();
    double start = cloth.length() - cloth.bias().bandLength();
    double x = start + (2 * (disc / perBand) + 1) * radius;
    double y = (2 * (disc % perBand) + 1) * radius;
    return cloth.turn() == 0 ? new Spot(x, y) : new Spot(cloth.width() - y, x);
  }
}
