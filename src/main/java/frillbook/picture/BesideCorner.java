package frillbook.picture;

import frillbook.bias.BesideDisc;
import frillbook.bias.CornerStrips;
import frillbook.measure.Rounding;
import frillbook.picture.BesideStrips.BesideStrip;
import frillbook.picture.BesideStrips.Deeps;
import frillbook.picture.BesideStrips.Runs;
import frillbook.straight.LaneStrip;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the strips beside the discs in one corner of bias fabric lie, or one half of the lanes
 * beside discs on straight grain.
 *
 * <p>On the bias, depth is counted from the near corner at right angles to the strips, and run
 * along them from the line that halves that corner.
 *
 * @param far whether it is the far corner, or the second half
 * @param left pieces cut left of the disc, as seen from the corner
 * @param right pieces cut right of it
 * @param skip pieces too wide for the corner
 */
record BesideCorner(CutFabric fabric, boolean far, int left, int right, int skip) {
  private static final double ROOT2 = Math.sqrt(2);

  static BesideCorner of(CutFabric fabric, List<FabricSide> sides, boolean far) {
    return new BesideCorner(
        fabric,
        far,
        sides.get(far ? FabricSide.FAR_LEFT : FabricSide.NEAR_LEFT).sideCut(),
        sides.get(far ? FabricSide.FAR_RIGHT : FabricSide.NEAR_RIGHT).sideCut(),
        fabric.isBias() && fabric.bias().cornerDiscs() >= (far ? 2 : 1) ? tooWide(fabric, far) : 0);
  }

  private static int tooWide(CutFabric fabric, boolean far) {
    double slack = far ? fabric.bias().farSlack() : fabric.bias().nearSlack();
    double room = fabric.bias().shorter() + Rounding.TINY;
    return (int)
        fabric.layouts().beside().stream()
            .mapToDouble(BesideDisc::besideLine)
            .filter(line -> line + slack > room)
            .count();
  }

  /** The strips, where {@code ties} have been met before them. */
  BesideStrips strips(int ties) {
    List<BesideStrip> rows = new ArrayList<>();
    int met = ties;
    for (int number = 1; number <= BesideStrips.MOST; number++) {
      BesideStrip row = fabric.isBias() ? piece(number) : lane(number, met);
      rows.add(row);
      met = row.besideTies();
    }
    return new BesideStrips(left, right, skip, count(), from(), List.copyOf(rows), List.of());
  }

  private int count() {
    if (fabric.isBias()) {
      return left + right == 0 ? 0 : left + 1 + right;
    }
    int end = !far && fabric.isZigzag() ? fabric.straight().whole() : fabric.lanes();
    return Math.max(0, Math.min(BesideStrips.MOST, Math.min(end, fabric.lanes()) - before()));
  }

  /** Lanes before the first of these; in zigzag those that only the far disc leaves are far. */
  private int before() {
    if (!far) {
      return 0;
    }
    return fabric.isZigzag()
        ? Math.max(fabric.straight().whole(), fabric.layouts().discLanes().lanesAtDisc())
        : BesideStrips.MOST;
  }

  private double from() {
    if (!fabric.isBias()) {
      return fabric.straight().full() * fabric.stripWidth();
    }
    return (far ? sum() - fabric.bias().far() : fabric.bias().near()) / ROOT2;
  }

  private double sum() {
    return fabric.bias().longer() + fabric.bias().shorter();
  }

  private BesideStrip lane(int number, int met) {
    if (count() == 0) {
      return strip(0, 0, met, false, 0, 0, 0, BesideStrip.INNER);
    }
    int lane = Math.min(number, count()) - 1 + before();
    LaneStrip place = fabric.lane(lane + 1);
    double offered = place.piece();
    boolean here = number <= count() && fabric.reaches(offered);
    int ties = met + (here && !fabric.isLonger(offered) ? 1 : 0);
    boolean cut = here && (fabric.isLonger(offered) || ties <= fabric.oddTies());
    double piece = (cut ? offered : 0) + fabric.fullBeside(lane + 1);
    return strip(
        lane,
        offered,
        ties,
        cut,
        piece,
        from() + lane * fabric.stripWidth(),
        fabric.run() - place.after() - piece,
        BesideStrip.INNER);
  }

  private BesideStrip piece(int number) {
    if (count() == 0) {
      return strip(0, 0, 0, false, 0, 0, 0, BesideStrip.INNER);
    }
    int at = Math.min(number, count());
    if (at == left + 1) {
      return rest();
    }
    int lane = laneOf(at);
    double piece = lengthOf(at, lane);
    double depth = from() + lane * fabric.stripWidth();
    int first = far == (at > left) ? BesideStrip.OUTER : BesideStrip.INNER;
    return strip(lane, piece, 0, false, piece, depth, start(at, depth, piece), first);
  }

  /** In the very corner of the fabric, between the left pieces and the right ones. */
  private BesideStrip rest() {
    double longer = far ? fabric.bias().longer() : 0;
    double shorter = far ? fabric.bias().shorter() : 0;
    return strip(
        0,
        0,
        0,
        false,
        0,
        (longer + shorter) / ROOT2,
        (longer - shorter) / ROOT2,
        BesideStrip.INNER);
  }

  /** Left pieces are drawn towards the corner, right ones away from it. */
  private int laneOf(int at) {
    int away = at <= left ? at : right - (at - left - 1) + 1;
    return far ? skip + away - 1 : -skip - away;
  }

  private double lengthOf(int at, int lane) {
    CornerStrips row = fabric.corners().get(far ? lane : -lane - 1);
    if (at <= left) {
      return far ? row.farLeft() : row.nearLeft();
    }
    return far ? row.farRight() : row.nearRight();
  }

  private double start(int at, double depth, double piece) {
    double outer = depth + fabric.stripWidth();
    if (at <= left) {
      return far ? ROOT2 * fabric.bias().longer() - outer - fabric.shift() - piece : -depth;
    }
    return far ? outer - fabric.shift() - ROOT2 * fabric.bias().shorter() : depth - piece;
  }

  private BesideStrip strip(
      int lane,
      double offered,
      int ties,
      boolean cut,
      double piece,
      double depth,
      double start,
      int first) {
    boolean inner = first == BesideStrip.INNER;
    double slant = piece > 0 ? fabric.shift() : 0;
    boolean isWide = piece > 0 || !fabric.isBias() && count() > 0;
    double outer = depth + (isWide ? fabric.stripWidth() : 0);
    double end = start + piece;
    Runs runs =
        inner
            ? new Runs(end, start, start + slant, end + slant)
            : new Runs(start + slant, end + slant, end, start);
    Deeps deeps = inner ? new Deeps(depth, outer) : new Deeps(outer, depth);
    return new BesideStrip(lane, offered, ties, cut, piece, depth, start, first, runs, deeps);
  }
}
