package frillbook.bias;

import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;

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
 * @param lineRim what the first disc of a line takes of the shorter side: d/√2, where the cut line
 *     that touches it meets the edge
 * @param edgeGain what a strip adds to the run for each unit of its extent along the edge
 * @param lineCount discs in a line along a long edge, where they are laid so; 0 where strips are
 *     too wide for the discs to be passed two at a time
 * @param lineRows strips cut past them
 * @param lineBand length of the bands that hold the other discs
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
    double cornersBand,
    double lineRim,
    double edgeGain,
    int lineCount,
    int lineRows,
    double lineBand) {
  private static final double ROOT2 = Math.sqrt(2);

  static BiasSetting of(Fabric fabric, Pieces pieces, Join join) {
    int corners = Math.min(2, pieces.discCount());
    double tip = BiasCutting.least(pieces, join) / ROOT2;
    double disc = reachOfDisc(pieces);
    int perBand = Math.max(1, Rounding.down(fabric.usableWidth() / pieces.discDiameter()));
    int line = inLine(pieces);
    double step = BiasCutting.lineStep(pieces);
    return new BiasSetting(
        corners,
        tip,
        disc,
        corners >= 1 ? disc : tip,
        corners >= 2 ? disc : tip,
        join.diagonal() ? 0 : pieces.stripWidth() / ROOT2,
        perBand,
        band(pieces, pieces.discCount(), perBand),
        band(pieces, pieces.discCount() - corners, perBand),
        pieces.discDiameter() / ROOT2,
        ROOT2 * join.gain(),
        line,
        line == 0 ? 0 : Rounding.up((line - 1 + ROOT2) * pieces.discDiameter() / step),
        band(pieces, pieces.discCount() - line, perBand));
  }

  /**
   * A strip meets the discs whose centres lie less than d√2 and a step apart along the edge. Two at
   * most while that is no more than 2d.
   */
  private static int inLine(Pieces pieces) {
    double discs = pieces.discDiameter() / BiasCutting.lineStep(pieces);
    boolean passed = Rounding.settle((2 - ROOT2) * discs - 1) >= 0;
    int fitting = Rounding.down(PastDisc.MOST / discs - ROOT2) + 1;
    return passed ? Math.max(0, Math.min(pieces.discCount(), fitting)) : 0;
  }

  /** Where the first cut line clear of a disc in the corner meets both edges. */
  static double reachOfDisc(Pieces pieces) {
    return pieces.discDiameter() * (1 + 1 / ROOT2);
  }

  private static double band(Pieces pieces, int discs, int perBand) {
    return Rounding.up((double) discs / perBand) * pieces.discDiameter();
  }
}
