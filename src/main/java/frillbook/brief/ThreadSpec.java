package frillbook.brief;

/**
 * How the cushion is stitched.
 *
 * @param stitchLength of seams, in millimetres
 * @param gatherStitchLength of gathering rows, in millimetres; about 4 (common practice, no source)
 * @param gatheringRows sewn along the strip
 * @param threadRatio thread for a length of seam, both threads together; lockstitch (ISO 4915 type
 *     301) 2.5 (Coats, stitch type classification). Chainstitch takes more and is not worked out:
 *     enter what unravelling a measured seam gives
 * @param handThreadRatio the same for tacking
 * @param threadWaste share added for ends and trials; 0.15 to 0.2 (A&amp;E technical bulletin)
 * @param reelLength in metres
 */
public record ThreadSpec(
    double stitchLength,
    double gatherStitchLength,
    int gatheringRows,
    double threadRatio,
    double handThreadRatio,
    double threadWaste,
    double reelLength) {}
