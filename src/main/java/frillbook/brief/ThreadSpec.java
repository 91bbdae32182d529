package frillbook.brief;

import frillbook.naming.Coded;

/**
 * How the cushion is stitched.
 *
 * @param stitchLength of seams, in millimetres
 * @param gatherStitchLength of gathering rows, in millimetres; about 4 (common practice, no source)
 * @param gatheringRows sewn along the strip
 * @param threadRatio thread for a length of seam, both threads together; lockstitch (ISO 4915 type
 *     301) 2.5 (Coats, stitch type classification). Chainstitch takes more and is not worked out:
 *     enter what unravelling a measured seam gives
 * @param edgeThreadRatio the same for an overlocked or rolled edge: 3 + 4S(W + T) for S stitches in
 *     a unit of length, an edge W wide and T thick (three threads, type 504). 2.5 mm stitches 5 mm
 *     wide over 0.3 mm of fabric take 11.5, so about 12
 * @param handThreadRatio the same for tacking, and for gathering by hand
 * @param threadWaste share added for ends and trials; 0.15 to 0.2 (A&amp;E technical bulletin)
 * @param reelLength in metres
 */
public record ThreadSpec(
    double stitchLength,
    double gatherStitchLength,
    int gatheringRows,
    GatherBy gatherBy,
    double threadRatio,
    double edgeThreadRatio,
    double handThreadRatio,
    double threadWaste,
    double reelLength) {

  /** How the gathering rows are sewn. */
  public enum GatherBy implements Coded {
    /** Long stitches, pulled up afterwards. */
    MACHINE,
    /** Running stitch, pulled up as it is sewn. */
    HAND
  }

  /** Whether the strip is pulled up in a step of its own. */
  public boolean pulledUp() {
    return gatherBy == GatherBy.MACHINE;
  }

  /** Thread for a length of gathering row. */
  public double gatherThreadRatio() {
    return pulledUp() ? threadRatio : handThreadRatio;
  }

  /** Thread for a length of free edge; a hem is sewn like any seam. */
  public double edgeThreadRatio(EdgeFinish edge) {
    return edge.isBound() ? edgeThreadRatio : threadRatio;
  }
}
