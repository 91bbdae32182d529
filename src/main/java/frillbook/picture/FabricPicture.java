package frillbook.picture;

import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;
import java.util.List;

/**
 * The frill fabric with its cut lines and discs, to scale: x along the selvage, y across, 1 the
 * height of the picture, which is twice as wide.
 *
 * @param fabricLength usable length
 * @param fabricScale the height of the picture
 * @param fabricTurn how the strips lie, as in {@link CutFabric#turn()}
 * @param fabricShift how much further along a strip its second long side begins
 * @param fabricRun extent of the fabric along straight strips
 * @param fullBeside whether full strips are cut beside discs too
 * @param fullLanes full strips side by side; those end to end count once
 * @param lanesOfFull lanes beside discs that full strips are drawn in
 * @param fabricDiscsDrawn discs that are drawn
 * @param fabricDiscRadius of all discs
 * @param fabricLeft discs, and strips on straight grain, that are not drawn
 * @param oddSure shorter strips that are longer than the shortest that is cut
 * @param oddTies strips cut of those that are just as long as the shortest
 */
public record FabricPicture(
    double fabricLength,
    double fabricScale,
    int fabricTurn,
    double fabricShift,
    double fabricRun,
    boolean fullBeside,
    int fullLanes,
    int lanesOfFull,
    int fabricDiscsDrawn,
    double fabricDiscRadius,
    int fabricLeft,
    int oddSure,
    int oddTies,
    List<FabricSide> fabricSides,
    CutLines cutLines,
    @Prefixed("fabric") Turning turning,
    @Prefixed("near") BesideStrips near,
    @Prefixed("far") BesideStrips far,
    List<StripEnd> stripEnds,
    List<FabricEdgePoint> fabricEdges,
    List<FabricDisc> fabricDiscs,
    @Prefixed("fabric") List<RoundPoint> fabricDiscPoints) {

  public record FabricEdgePoint(double fabricEdgeX, double fabricEdgeY) {}

  public static FabricPicture of(CutFabric fabric) {
    double scale = fabric.scale();
    int discs = fabric.discs().matchingDiscCount();
    int drawn = Math.min(discs, DrawnPieces.MOST);
    double radius = fabric.discs().baseCutDiameter() / 2 / scale;
    var centres = FabricDisc.all(fabric);
    var sides = FabricSide.all(fabric);
    CutLines lines = CutLines.of(fabric, sides);
    int inFar = CutLines.cut(sides, FabricSide.FAR_LANE, FabricSide.FAR_PAIR);
    Turning turning = Turning.of(fabric);
    Spot end = fabric.farCorner();
    var near = beside(BesideCorner.of(fabric, sides, false), 0, turning, lines, end);
    var far = beside(BesideCorner.of(fabric, sides, true), near.ties(), turning, lines, end);
    int strips =
        fabric.isBias() ? 0 : fabric.cut().odd() - near.cut() - far.cut() + fabric.fullLeft();
    return new FabricPicture(
        fabric.length(),
        scale,
        fabric.turn(),
        fabric.shift(),
        fabric.run(),
        !fabric.isBias() && fabric.cutsFullBeside(),
        fabric.fullLanes(inFar),
        fabric.isBias() ? 0 : fabric.lanesOfFull(),
        drawn,
        radius,
        discs - drawn + strips,
        fabric.oddSure(),
        fabric.oddTies(),
        sides,
        lines,
        turning,
        near,
        far,
        StripEnd.all(fabric, lines.fabricPast(), near, far),
        edge(fabric),
        centres,
        RoundPoint.hatched(centres.stream().map(FabricDisc::centre).toList(), radius, drawn));
  }

  private static BesideStrips beside(
      BesideCorner corner, int ties, Turning turning, CutLines lines, Spot far) {
    return corner.strips(ties).placed(turning, lines.fabricYFrom(), far);
  }

  /** From the line that marks a selvage to the selvage. */
  static final double DOUBLED = .012;

  /**
   * Round the fabric, on to where bias strips end and straight bands of discs begin, and along a
   * second line beside each selvage.
   */
  private static List<FabricEdgePoint> edge(CutFabric fabric) {
    double length = Rounding.drawn(fabric.length() / fabric.scale());
    double width = Rounding.drawn(fabric.width() / fabric.scale());
    double upper = Rounding.drawn(fabric.width() / fabric.scale() - DOUBLED);
    double band = fabric.isBias() ? fabric.bias().bandLength() : 0;
    double strips = Rounding.drawn((fabric.length() - band) / fabric.scale());
    return List.of(
        new FabricEdgePoint(0, 0),
        new FabricEdgePoint(length, 0),
        new FabricEdgePoint(length, width),
        new FabricEdgePoint(0, width),
        new FabricEdgePoint(0, 0),
        new FabricEdgePoint(strips, 0),
        new FabricEdgePoint(strips, width),
        new FabricEdgePoint(length, width),
        new FabricEdgePoint(length, upper),
        new FabricEdgePoint(0, upper),
        new FabricEdgePoint(0, DOUBLED),
        new FabricEdgePoint(length, DOUBLED));
  }
}
