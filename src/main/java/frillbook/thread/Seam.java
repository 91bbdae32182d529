package frillbook.thread;

import frillbook.brief.Brief;
import frillbook.brief.EdgeFinish;
import frillbook.brief.ThreadSpec;
import frillbook.measure.LengthUnit;
import frillbook.measure.Outline;
import java.util.List;
import java.util.stream.Stream;

/**
 * One kind of seam and the thread it takes, for all cushions.
 *
 * @param seamLength in metres; 0 where there is no such seam
 * @param seamRatio thread for a length of seam
 * @param seamThread in metres, without waste: 10 m of lockstitch take 25 m
 * @param seamShown length in yards beside inches, in metres beside centimetres
 * @param threadShown thread, the same
 */
public record Seam(
    SeamName seamName,
    double seamLength,
    double seamRatio,
    double seamThread,
    double seamShown,
    double threadShown) {

  static Seam of(SeamName name, double metres, double ratio) {
    return new Seam(name, metres, ratio, metres * ratio, metres, metres * ratio);
  }

  private Seam in(LengthUnit unit) {
    double metres = unit.metresPerLong();
    return new Seam(
        seamName, seamLength, seamRatio, seamThread, seamLength / metres, seamThread / metres);
  }

  /** Every seam in working order. */
  public static List<Seam> all(Brief brief, Sewing sewing) {
    ThreadSpec spec = brief.thread();
    EdgeFinish edge = brief.frill().edgeFinish();
    double machine = spec.threadRatio();
    double flat = batch(brief, sewing.flatLength());
    double rows = batch(brief, sewing.stitchedLength());
    double around = batch(brief, Outline.around(brief.cushion().diameter()));
    return Stream.of(
            of(SeamName.WIDTHS, brief.unit().metres(sewing.widthSeam()), machine),
            of(SeamName.GATHERING, flat * spec.gatheringRows(), spec.gatherThreadRatio()),
            of(SeamName.JOINS, joins(brief, sewing), machine),
            of(SeamName.FREE_EDGE, edge.isSewn() ? flat : 0, spec.edgeThreadRatio(edge)),
            of(SeamName.ROWS, rows, machine),
            of(SeamName.TACKING, rows, spec.handThreadRatio()),
            of(SeamName.EDGE_SEAM, around, machine),
            of(SeamName.BACK, back(brief, sewing), machine))
        .map(seam -> seam.in(brief.unit()))
        .toList();
  }

  private static double batch(Brief brief, double length) {
    return brief.unit().metres(length * brief.cushion().quantity());
  }

  private static double joins(Brief brief, Sewing sewing) {
    int passes = brief.joins().joinFinish().passes();
    return brief.unit().metres(sewing.joinCount() * sewing.stripWidth() * passes);
  }

  private static double back(Brief brief, Sewing sewing) {
    return batch(brief, sewing.backWidth()) * brief.base().backStyle().seams();
  }
}
