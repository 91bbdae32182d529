package frillbook.discs;

import frillbook.discs.BasePlaces.Place;
import frillbook.measure.Rounding;

/**
 * Lines of discs of one size, straight across their fabric; every second line may be moved in.
 *
 * @param discCount discs in all, at least 1
 * @param rows lines that hold a disc
 * @param pitch from centre to centre within a line
 * @param shift by how much every second line is moved in
 * @param rowStep from centre to centre of two lines along the fabric
 */
public record DiscRows(int discCount, int rows, double pitch, double shift, double rowStep) {

  /** {@code discs} of diameter {@code disc} in a square grid, {@code perRow} to a line. */
  static DiscRows grid(int discs, int perRow, double disc) {
    return new DiscRows(discs, Rounding.up((double) discs / perRow), disc, 0, disc);
  }

  /**
   * The same in zigzag from one selvage to the other. Lines of k discs, every second of them half a
   * pitch further in, take k − ½ pitches and a disc of the {@code width}. Neighbours of two lines
   * touch; where lines are wide apart, they come nearer to each other until a line touches the one
   * after the next, at half a disc. 36 in hold one disc of 19 7/8 in: a shift of 16 1/8 in and a
   * step of √(19.875² − 16.125²) = 11.62 in.
   */
  static DiscRows zigzag(int discs, int perRow, double disc, double width) {
    double shift = (width - disc) / (2 * perRow - 1);
    double squared = Rounding.settleSquare(disc * disc - shift * shift);
    double step = Math.max(disc / 2, Math.sqrt(Math.max(0, squared)));
    return new DiscRows(discs, Rounding.up((double) discs / perRow), 2 * shift, shift, step);
  }

  /** Fabric the lines of discs of diameter {@code disc} take. */
  double length(double disc) {
    return disc + (rows - 1) * rowStep;
  }

  /** The centre of disc {@code index}, from 0, of {@code perRow} to a line. */
  Place centre(int index, int perRow, double disc) {
    int row = index / perRow;
    return new Place(disc / 2 + row * rowStep, disc / 2 + index % perRow * pitch + row % 2 * shift);
  }
}
