package frillbook.straight;

import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;

/**
 * How many strips a disc touches where strips lie side by side.
 *
 * @param laneMargin left at the far selvage beyond as many lengthwise strips as the fabric holds
 * @param lanesAtSelvedge of these, strips that touch a disc at the far selvage
 * @param lanesAtDisc strips that touch a disc against the last full strip
 */
public record DiscLanes(double laneMargin, int lanesAtSelvedge, int lanesAtDisc) {

  /** Strips and discs of {@code pieces} on fabric of {@code usableWidth}. */
  public static DiscLanes of(Pieces pieces, double usableWidth) {
    double width = pieces.stripWidth();
    double diameter = pieces.discDiameter();
    double margin = usableWidth - Rounding.down(usableWidth / width) * width;
    int atSelvedge = Math.max(0, Rounding.up((diameter - margin) / width));
    return new DiscLanes(margin, atSelvedge, Rounding.up(diameter / width));
  }
}
