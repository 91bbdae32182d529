package frillbook.straight;

import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A strip's place beside discs on straight-grain fabric, counted from the last full strip.
 *
 * <p>Discs stand in lines against each other, the lines one disc diameter apart, the first line
 * touching the last full strip. A lane runs past the discs of the nearest line; how far it is from
 * their centres says how much of a disc it must spare.
 *
 * @param laneNo from 1
 * @param laneLine the line of discs that its middle lies beside, from 1: the nearest
 * @param laneOffset least distance of the lane from the centres of that line; 0 where the lane runs
 *     over them
 * @param laneHalfChord half the width of a disc at that distance: what the disc takes beyond its
 *     centre; a lane through the centre loses the radius, one at the rim nothing
 * @param laneFarChord the same of a disc at the far selvage, for lengthwise strips, the lanes
 *     counted from there
 */
public record Lane(
    int laneNo, int laneLine, double laneOffset, double laneHalfChord, double laneFarChord) {
  /** Lanes considered; the fabric beside further discs is left as offcut. */
  public static final int MOST = 32;

  /** The lanes beside discs of {@code pieces} on fabric of {@code usableWidth}. */
  public static List<Lane> beside(Pieces pieces, double usableWidth) {
    double margin = DiscLanes.of(pieces, usableWidth).laneMargin();
    return IntStream.rangeClosed(1, MOST).mapToObj(n -> at(n, pieces, margin)).toList();
  }

  private static Lane at(int laneNo, Pieces pieces, double margin) {
    double diameter = pieces.discDiameter();
    double middle = (laneNo - 0.5) * pieces.stripWidth();
    int line = Rounding.down(middle / diameter) + 1;
    double offset = offset(middle, (line - 0.5) * diameter, pieces);
    double farOffset = offset(margin + middle, pieces.discRadius(), pieces);
    return new Lane(
        laneNo,
        line,
        offset,
        halfChord(pieces.discRadius(), offset),
        halfChord(pieces.discRadius(), farOffset));
  }

  /** Least distance of a lane with its {@code middle} there from a disc's {@code centre}. */
  private static double offset(double middle, double centre, Pieces pieces) {
    return Math.max(0, Math.abs(middle - centre) - pieces.stripWidth() / 2);
  }

  /**
   * Half the width of a disc of {@code radius} at {@code offset} from its centre; 0 outside.
   *
   * <p>The square is settled to nine places, so that a lane that just touches the rim reads 0 in
   * every program.
   */
  public static double halfChord(double radius, double offset) {
    return Math.sqrt(Rounding.settleSquare(Math.max(0, radius * radius - offset * offset)));
  }
}
