package frillbook.discs;

import frillbook.discs.BasePlaces.Place;
import frillbook.measure.LengthUnit;
import frillbook.measure.Rounding;
import frillbook.measure.Tape;

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
   * pitch further in, take k − ½ pitches and a disc of the {@code width}. Both steps are what a
   * tape tells: the shift is no more than the width allows, and the step from line to line no less
   * than discs need that are marked so.
   */
  static DiscRows zigzag(LengthUnit unit, int discs, int perRow, double disc, double width) {
    double shift = Tape.down(unit, (width - disc) / (2 * perRow - 1));
    double step = Tape.up(unit, touching(disc, shift));
    return new DiscRows(discs, Rounding.up((double) discs / perRow), 2 * shift, shift, step);
  }

  /**
   * From line to line where neighbours of two lines, {@code shift} further in, touch; where lines
   * are wide apart, they come nearer to each other until a line touches the one after the next, at
   * half a disc. Discs of 19 7/8 in moved in by 16 1/8 are √(19.875² − 16.125²) = 11.62 in on.
   */
  static double touching(double disc, double shift) {
    double squared = Rounding.settleSquare(disc * disc - shift * shift);
    return Math.max(disc / 2, Math.sqrt(Math.max(0, squared)));
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
