package frillbook.picture;

import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;
import java.util.List;

/**
 * The frill cloth with its cut lines and discs, to scale: x along the selvage, y across, 1 the
 * height of the picture, which is twice as wide.
 *
 * @param clothLength usable length
 * @param clothScale the height of the picture
 * @param clothTurn how the strips lie, as in {@link CutCloth#turn()}
 * @param clothShift how much further along a strip its second long side begins
 * @param clothDiscsDrawn discs that are drawn
 * @param clothDiscRadius of all discs
 * @param clothLeft discs, and on straight grain strips beside them, that are not drawn
 * @param oddSure shorter strips that are longer than the shortest that is cut
 * @param oddTies strips cut of those that are just as long as the shortest
 */
public record ClothPicture(
    double clothLength,
    double clothScale,
    int clothTurn,
    double clothShift,
    int clothDiscsDrawn,
    double clothDiscRadius,
    int clothLeft,
    int oddSure,
    int oddTies,
    List<ClothSide> clothSides,
    CutLines cutLines,
    @Prefixed("cloth") Turning turning,
    @Prefixed("near") BesideStrips near,
    @Prefixed("far") BesideStrips far,
    List<ClothEdgePoint> clothEdges,
    List<ClothDisc> clothDiscs,
    @Prefixed("cloth") List<RoundPoint> clothDiscPoints) {

  public record ClothEdgePoint(double clothEdgeX, double clothEdgeY) {}

  public static ClothPicture of(CutCloth cloth) {
    double scale = cloth.scale();
    int discs = cloth.discs().overlayCount();
    int drawn = Math.min(discs, DrawnPieces.MOST);
    double radius = cloth.discs().baseCutDiameter() / 2 / scale;
    var centres = ClothDisc.all(cloth);
    var sides = ClothSide.all(cloth);
    CutLines lines = CutLines.of(cloth, sides);
    Turning turning = Turning.of(cloth);
    var near = beside(BesideCorner.of(cloth, sides, false), 0, turning, lines);
    var far = beside(BesideCorner.of(cloth, sides, true), near.ties(), turning, lines);
    int strips = cloth.isBias() ? 0 : cloth.cut().odd() - near.cut() - far.cut();
    return new ClothPicture(
        cloth.length(),
        scale,
        cloth.turn(),
        cloth.shift(),
        drawn,
        radius,
        discs - drawn + strips,
        cloth.oddSure(),
        cloth.oddTies(),
        sides,
        lines,
        turning,
        near,
        far,
        edge(cloth),
        centres,
        RoundPoint.around(centres.stream().map(ClothDisc::centre).toList(), radius, drawn));
  }

  private static BesideStrips beside(
      BesideCorner corner, int ties, Turning turning, CutLines lines) {
    return corner.strips(ties).placed(turning, lines.clothYFrom());
  }

  /** Round the cloth, and on to where bias strips end and straight bands of discs begin. */
  private static List<ClothEdgePoint> edge(CutCloth cloth) {
    double length = Rounding.drawn(cloth.length() / cloth.scale());
    double width = Rounding.drawn(cloth.width() / cloth.scale());
    double band = cloth.isBias() ? cloth.bias().bandLength() : 0;
    double strips = Rounding.drawn((cloth.length() - band) / cloth.scale());
    return List.of(
        new ClothEdgePoint(0, 0),
        new ClothEdgePoint(length, 0),
        new ClothEdgePoint(length, width),
        new ClothEdgePoint(0, width),
        new ClothEdgePoint(0, 0),
        new ClothEdgePoint(strips, 0),
        new ClothEdgePoint(strips, width));
  }
}
