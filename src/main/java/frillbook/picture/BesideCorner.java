package frillbook.picture;

import frillbook.bias.BesideDisc;
import frillbook.bias.CornerStrips;
import frillbook.measure.Rounding;
import frillbook.picture.BesideStrips.BesideStrip;
import frillbook.picture.BesideStrips.Deeps;
import frillbook.picture.BesideStrips.Runs;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the strips beside the discs in one corner of bias cloth lie, or one half of the lanes
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
record BesideCorner(CutCloth cloth, boolean far, int left, int right, int skip) {
  private static final double ROOT2 = Math.sqrt(2);

  static BesideCorner of(CutCloth cloth, List<ClothSide> sides, boolean far) {
    return new BesideCorner(
        cloth,
        far,
        sides.get(far ? ClothSide.FAR_LEFT : ClothSide.NEAR_LEFT).sideCut(),
        sides.get(far ? ClothSide.FAR_RIGHT : ClothSide.NEAR_RIGHT).sideCut(),
        cloth.isBias() && cloth.bias().cornerDiscs() >= (far ? 2 : 1) ? tooWide(cloth, far) : 0);
  }

  private static int tooWide(CutCloth cloth, boolean far) {
    double slack = far ? cloth.bias().farSlack() : cloth.bias().nearSlack();
    double room = cloth.bias().shorter() + Rounding.TINY;
    return (int)
        cloth.layouts().beside().stream()
            .mapToDouble(BesideDisc::besideLine)
            .filter(line -> line + slack > room)
            .count();
  }

  /** The strips, where {@code ties} have been met before them. */
  BesideStrips strips(int ties) {
    List<BesideStrip> rows = new ArrayList<>();
    int met = ties;
    for (int number = 1; number <= BesideStrips.MOST; number++) {
      BesideStrip row = cloth.isBias() ? piece(number) : lane(number, met);
      rows.add(row);
      met = row.besideTies();
    }
    return new BesideStrips(left, right, skip, count(), from(), List.copyOf(rows), List.of());
  }

  private int count() {
    if (cloth.isBias()) {
      return left + right == 0 ? 0 : left + 1 + right;
    }
    int before = far ? BesideStrips.MOST : 0;
    return Math.max(0, Math.min(BesideStrips.MOST, cloth.lanes() - before));
  }

  private double from() {
    if (!cloth.isBias()) {
      return cloth.cut().full() * cloth.stripWidth();
    }
    return (far ? sum() - cloth.bias().far() : cloth.bias().near()) / ROOT2;
  }

  private double sum() {
    return cloth.bias().longer() + cloth.bias().shorter();
  }

  private BesideStrip lane(int number, int met) {
    if (count() == 0) {
      return strip(0, 0, met, 0, 0, 0, BesideStrip.INNER);
    }
    int lane = Math.min(number, count()) - 1 + (far ? BesideStrips.MOST : 0);
    double offered = cloth.lane(lane + 1);
    boolean here = number <= count() && cloth.reaches(offered);
    int ties = met + (here && !cloth.isLonger(offered) ? 1 : 0);
    boolean cut = here && (cloth.isLonger(offered) || ties <= cloth.oddTies());
    double piece = cut ? offered : 0;
    return strip(
        lane,
        offered,
        ties,
        piece,
        from() + lane * cloth.stripWidth(),
        cloth.plan().stripLength() - piece,
        BesideStrip.INNER);
  }

  private BesideStrip piece(int number) {
    if (count() == 0) {
      return strip(0, 0, 0, 0, 0, 0, BesideStrip.INNER);
    }
    int at = Math.min(number, count());
    if (at == left + 1) {
      return rest();
    }
    int lane = laneOf(at);
    double piece = lengthOf(at, lane);
    double depth = from() + lane * cloth.stripWidth();
    int first = far == (at > left) ? BesideStrip.OUTER : BesideStrip.INNER;
    return strip(lane, piece, 0, piece, depth, start(at, depth, piece), first);
  }

  /** In the very corner of the cloth, between the left pieces and the right ones. */
  private BesideStrip rest() {
    double longer = far ? cloth.bias().longer() : 0;
    double shorter = far ? cloth.bias().shorter() : 0;
    return strip(
        0, 0, 0, 0, (longer + shorter) / ROOT2, (longer - shorter) / ROOT2, BesideStrip.INNER);
  }

  /** Left pieces are drawn towards the corner, right ones away from it. */
  private int laneOf(int at) {
    int away = at <= left ? at : right - (at - left - 1) + 1;
    return far ? skip + away - 1 : -skip - away;
  }

  private double lengthOf(int at, int lane) {
    CornerStrips row = cloth.corners().get(far ? lane : -lane - 1);
    if (at <= left) {
      return far ? row.farLeft() : row.nearLeft();
    }
    return far ? row.farRight() : row.nearRight();
  }

  private double start(int at, double depth, double piece) {
    double outer = depth + cloth.stripWidth();
    if (at <= left) {
      return far ? ROOT2 * cloth.bias().longer() - outer - cloth.shift() - piece : -depth;
    }
    return far ? outer - cloth.shift() - ROOT2 * cloth.bias().shorter() : depth - piece;
  }

  private BesideStrip strip(
      int lane, double offered, int ties, double piece, double depth, double start, int first) {
    boolean inner = first == BesideStrip.INNER;
    double slant = piece > 0 ? cloth.shift() : 0;
    double outer = depth + (piece > 0 ? cloth.stripWidth() : 0);
    double end = start + piece;
    Runs runs =
        inner
            ? new Runs(end, start, start + slant, end + slant)
            : new Runs(start + slant, end + slant, end, start);
    Deeps deeps = inner ? new Deeps(depth, outer) : new Deeps(outer, depth);
    return new BesideStrip(lane, offered, ties, piece, depth, start, first, slant, runs, deeps);
  }
}
