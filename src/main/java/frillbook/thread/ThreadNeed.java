package frillbook.thread;

import frillbook.brief.Brief;
import frillbook.brief.ThreadSpec;
import frillbook.measure.Rounding;
import java.util.List;

/**
 * Thread for the whole order, and how the stitches count.
 *
 * @param threadLength in metres, with waste
 * @param threadReels to buy
 * @param stitchesPerInch of seams: 2.5 mm give 10.16
 * @param stitchesPerCm of seams: 2.5 mm give 4
 * @param gatherStitchesPerInch of gathering rows: 4 mm give 6.35
 * @param gatherStitchesPerCm of gathering rows: 4 mm give 2.5
 */
public record ThreadNeed(
    List<Seam> seams,
    double threadLength,
    int threadReels,
    double stitchesPerInch,
    double stitchesPerCm,
    double gatherStitchesPerInch,
    double gatherStitchesPerCm) {
  private static final double MM_PER_INCH = 25.4;
  private static final double MM_PER_CM = 10;

  public static ThreadNeed of(Brief brief, Sewing sewing) {
    ThreadSpec spec = brief.thread();
    List<Seam> seams = Seam.all(brief, sewing);
    double length = withWaste(seams, spec.threadWaste());
    return new ThreadNeed(
        seams,
        length,
        Rounding.up(length / spec.reelLength()),
        MM_PER_INCH / spec.stitchLength(),
        MM_PER_CM / spec.stitchLength(),
        MM_PER_INCH / spec.gatherStitchLength(),
        MM_PER_CM / spec.gatherStitchLength());
  }

  /** Thread of all {@code seams} and a share of {@code waste}: 6.63 and 15 % make 7.62. */
  static double withWaste(List<Seam> seams, double waste) {
    return seams.stream().mapToDouble(Seam::seamThread).sum() * (1 + waste);
  }
}
