package frillbook.cutting;

import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A strip's place beside discs on straight-grain cloth, counted from the last full strip.
 *
 * <p>Discs stand in lines against each other, the lines one disc diameter apart, the first line
 * touching the last full strip. A lane runs past the discs of the nearest line; how far it is from
 * their centres says how much of a disc it must spare.
 *
 * @param laneNo from 1
 * @param laneOffset least distance of the lane from the centres of the nearest line; 0 where the
 *     lane runs over them
 * @param laneHalfChord half the width of a disc at that distance: what the disc takes beyond its
 *     centre; a lane through the centre loses the radius, one at the rim nothing
 */
public record Lane(int laneNo, double laneOffset, double laneHalfChord) {
  /** Lanes considered; the cloth beside further discs is left as offcut. */
  public static final int MOST = 32;

  static List<Lane> beside(Pieces pieces) {
    return IntStream.rangeClosed(1, MOST).mapToObj(n -> at(n, pieces)).toList();
  }

  private static Lane at(int laneNo, Pieces pieces) {
    double diameter = pieces.discDiameter();
    double middle = (laneNo - 0.5) * pieces.stripWidth();
    double line = Math.floor(Rounding.settle(middle / diameter)) + 0.5;
    double offset = Math.max(0, Math.abs(middle - line * diameter) - pieces.stripWidth() / 2);
    double radius = pieces.discRadius();
    return new Lane(laneNo, offset, halfChord(radius, offset));
  }

  /**
   * Half the width of a disc of {@code radius} at {@code offset} from its centre; 0 outside.
   *
   * <p>The square is settled to nine places, so that a lane that just touches the rim reads 0 in
   * every program.
   */
  static double halfChord(double radius, double offset) {
    return Math.sqrt(Rounding.settleSquare(Math.max(0, radius * radius - offset * offset)));
  }
}
