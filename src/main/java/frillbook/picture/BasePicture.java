package frillbook.picture;

import frillbook.discs.BasePlaces;
import frillbook.discs.DiscSizes;
import frillbook.measure.Rounding;
import frillbook.naming.Indexed;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The base fabric with the discs of a base's size and the rectangles for other back pieces, to
 * scale: x along the selvage, y across, 1 the height of the picture, which is three times as wide.
 *
 * @param baseUsableLength left of the bought length, washed and its ends straightened; of each
 *     width that is sewn to others
 * @param baseFabricScale the height of the picture
 * @param baseLastWidth what the discs in the last line of a grid take of the width
 * @param backDeep back pieces behind each other beside them
 * @param baseDiscRadius drawn radius of a disc
 * @param baseDiscsDrawn discs that are drawn
 * @param baseDiscsLeft discs that are not
 * @param baseBacksDrawn rectangles that are drawn
 * @param baseBacksLeft rectangles that are not
 * @param basePiecesLeft both together
 * @param baseDiscs centres of the drawn discs
 * @param baseBacks corners of the drawn rectangles, those nearest to x = y = 0
 */
public record BasePicture(
    double baseUsableLength,
    double baseFabricScale,
    double baseLastWidth,
    int backDeep,
    double baseDiscRadius,
    int baseDiscsDrawn,
    int baseDiscsLeft,
    int baseBacksDrawn,
    int baseBacksLeft,
    int basePiecesLeft,
    @Prefixed("base_disc") List<Spot> baseDiscs,
    @Prefixed("back") List<Spot> baseBacks,
    @Prefixed("base") List<RoundPoint> baseDiscPoints,
    @Prefixed("back") List<BackPoint> backPoints,
    @Prefixed("base_edge") List<Spot> baseEdges) {

  /** Fabric for several cushions is longer than wide. */
  private static final double WIDE = 3;

  /**
   * A corner of all drawn rectangles.
   *
   * @param side from the corner nearest to x = y = 0
   */
  public record BackPoint(
      @Prefixed("side") Spot side, @Indexed(DrawnPieces.MOST) List<Spot> backs) {}

  public static BasePicture of(CutBase fabric) {
    double scale = Math.max(fabric.length() / WIDE, fabric.width());
    BasePlaces places = fabric.places();
    double radius = places.sizes().baseCutDiameter() / 2 / scale;
    List<Spot> discs = spots(places.discs(), places::disc, scale);
    List<Spot> backs = spots(places.backs(), places::back, scale);
    return new BasePicture(
        fabric.length(),
        scale,
        places.lastWidth(),
        places.sizes().backDeep(),
        radius,
        discs.size(),
        places.discs() - discs.size(),
        backs.size(),
        places.backs() - backs.size(),
        places.discs() - discs.size() + places.backs() - backs.size(),
        discs,
        backs,
        RoundPoint.some(discs, radius, discs.size(), places::isMatching),
        backPoints(places.sizes(), backs, scale),
        edge(fabric, scale));
  }

  private static List<Spot> spots(int count, IntFunction<BasePlaces.Place> place, double scale) {
    return IntStream.range(0, Math.min(DrawnPieces.MOST, count))
        .mapToObj(place)
        .map(at -> new Spot(at.x() / scale, at.y() / scale))
        .toList();
  }

  private static List<BackPoint> backPoints(DiscSizes sizes, List<Spot> backs, double scale) {
    double high = sizes.backPieceHeight() / scale;
    double wide = sizes.backCutDiameter() / scale;
    return corners(high, wide)
        .map(side -> new BackPoint(side, DrawnPieces.from(backs, backs.size(), side)))
        .toList();
  }

  /** Once round, and along a second line beside each selvage. */
  private static List<Spot> edge(CutBase fabric, double scale) {
    double length = Rounding.drawn(fabric.length() / scale);
    double width = fabric.width() / scale;
    double upper = Rounding.drawn(width - FabricPicture.DOUBLED);
    Stream<Spot> inner =
        Stream.of(
            new Spot(0, FabricPicture.DOUBLED),
            new Spot(length, FabricPicture.DOUBLED),
            new Spot(length, upper),
            new Spot(0, upper));
    return Stream.concat(corners(length, Rounding.drawn(width)), inner).toList();
  }

  /** Once round a rectangle, beginning and ending where x = y = 0. */
  private static Stream<Spot> corners(double length, double width) {
    return Stream.of(
        new Spot(0, 0),
        new Spot(length, 0),
        new Spot(length, width),
        new Spot(0, width),
        new Spot(0, 0));
  }
}
