package frillbook.discs;

/**
 * Where bases and back pieces lie on their fabric: x along the selvage from the start of the
 * fabric, y across it from one selvage; lengths in the unit of the brief.
 *
 * @param fabric how they lie
 */
public record BasePlaces(DiscSizes sizes, BaseFabric fabric) {

  /** A place on the fabric. */
  public record Place(double x, double y) {}

  /** Discs of a base's size; in zigzag the last of them are backs, where those are discs. */
  public int discs() {
    return fabric.discs().discCount();
  }

  /** Back pieces that lie in rectangles of their own. */
  public int backs() {
    return fabric.backs().apart();
  }

  /** What the discs in the last line of a grid take of the width. */
  public double lastWidth() {
    int before = (fabric.grid().rows() - 1) * fabric.basePerRow();
    return (bases() - before) * sizes.baseCutDiameter();
  }

  /** Discs but for the backs among them. */
  private int bases() {
    return discs() - (sizes.backPieceCount() - backs());
  }

  /** Whether disc {@code disc}, from 0, is a matching disc: they follow the bases. */
  public boolean isMatching(int disc) {
    return disc < bases() && disc >= bases() - sizes.baseMatchingCount();
  }

  /** The centre of disc {@code disc}, from 0. */
  public Place disc(int disc) {
    return fabric.discs().centre(disc, fabric.basePerRow(), sizes.baseCutDiameter());
  }

  /** The corner of the rectangle for back piece {@code back}, from 0, nearest to x = y = 0. */
  public Place back(int back) {
    int beside = fabric.backs().beside();
    return back < beside ? beside(back) : inOwnRow(back - beside);
  }

  private Place beside(int back) {
    double start = discLength() - sizes.baseCutDiameter();
    return new Place(
        start + back % sizes.backDeep() * sizes.backPieceHeight(),
        lastWidth() + back / sizes.backDeep() * sizes.backCutDiameter());
  }

  private Place inOwnRow(int back) {
    return new Place(
        discLength() + back / fabric.backPerRow() * sizes.backPieceHeight(),
        back % fabric.backPerRow() * sizes.backCutDiameter());
  }

  private double discLength() {
    return fabric.discs().length(sizes.baseCutDiameter());
  }
}
