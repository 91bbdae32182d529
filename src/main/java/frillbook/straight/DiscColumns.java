package frillbook.straight;

import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;

/**
 * Discs in columns along one selvage, taken as a rectangle, beside lengthwise strips of one length.
 *
 * @param allLanes lengthwise strips that lie side by side; 1 where the fabric is too narrow for one
 * @param mostColumns columns that the fabric is wide for
 * @param one all discs in one column
 * @param most in as many columns as the fabric is wide for
 */
public record DiscColumns(
    int allLanes,
    int mostColumns,
    @Prefixed("one_column") Block one,
    @Prefixed("disc_columns") Block most) {

  /**
   * The rectangle.
   *
   * @param length along the selvage
   * @param lanes strips side by side that it is in the way of
   */
  public record Block(double length, int lanes) {}

  public static DiscColumns of(Pieces pieces, double usableWidth) {
    int lanes = Math.max(1, Rounding.down(usableWidth / pieces.stripWidth()));
    int most = Math.max(1, Rounding.down(usableWidth / pieces.discDiameter()));
    return new DiscColumns(
        lanes, most, block(pieces, usableWidth, lanes, 1), block(pieces, usableWidth, lanes, most));
  }

  private static Block block(Pieces pieces, double usableWidth, int lanes, int columns) {
    double length = Rounding.up((double) pieces.discCount() / columns) * pieces.discDiameter();
    double room = usableWidth - columns * pieces.discDiameter();
    int taken = pieces.discCount() == 0 ? 0 : lanes - Rounding.down(room / pieces.stripWidth());
    return new Block(length, taken);
  }

  /**
   * The least length that holds {@code wanted} strips: a whole number of them, or so much more than
   * the rectangle.
   */
  double length(Block discs, double strip, int wanted) {
    int whole = Rounding.down(discs.length() / strip);
    int lost = Rounding.up(discs.length() / strip);
    double even = Rounding.up((double) (wanted + discs.lanes() * lost) / allLanes) * strip;
    double past = Rounding.up((double) (wanted + discs.lanes() * whole) / allLanes) * strip;
    return Math.max(discs.length(), Math.min(even, past + discs.length() - whole * strip));
  }
}
