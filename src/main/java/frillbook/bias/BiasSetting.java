package frillbook.bias;

import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;

/**
 * What is the same for every length of fabric tried for bias strips.
 *
 * @param cornerCount discs in the right-angled corners, where they are used: one in each at most
 * @param tip where the first cut line meets both edges in a corner without a disc: there the first
 *     strip is just worth cutting
 * @param discReach the same in a corner with a disc pushed right into it: d + d/√2
 * @param nearReach the one or the other, for the near corner
 * @param farReach the same for the far corner
 * @param squareEnds what square ends take off the waist; 0 for slanting ends
 * @param perBand discs side by side in a straight band across the end of the fabric
 * @param endsBand length of the bands when all discs are in them
 * @param cornersBand length of the bands when the corners are used too
 */
public record BiasSetting(
    int cornerCount,
    double tip,
    double discReach,
    double nearReach,
    double farReach,
    double squareEnds,
    int perBand,
    double endsBand,
    double cornersBand) {
  private static final double ROOT2 = Math.sqrt(2);

  static BiasSetting of(BiasCutting cutting) {
    Pieces pieces = cutting.pieces();
    int corners = Math.min(2, pieces.discCount());
    double tip = cutting.least() / ROOT2;
    double disc = reachOfDisc(pieces);
    int perBand =
        Math.max(1, Rounding.down(cutting.fabric().usableWidth() / pieces.discDiameter()));
    return new BiasSetting(
        corners,
        tip,
        disc,
        corners >= 1 ? disc : tip,
        corners >= 2 ? disc : tip,
        cutting.join().diagonal() ? 0 : pieces.stripWidth() / ROOT2,
        perBand,
        band(pieces, pieces.discCount(), perBand),
        band(pieces, pieces.discCount() - corners, perBand));
  }

  /** Where the first cut line clear of a disc in the corner meets both edges. */
  static double reachOfDisc(Pieces pieces) {
    return pieces.discDiameter() * (1 + 1 / ROOT2);
  }

  private static double band(Pieces pieces, int discs, int perBand) {
    return Rounding.up((double) discs / perBand) * pieces.discDiameter();
  }
}
