package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.FrillCutting;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.Join;
import frillbook.rows.Rings;
import frillbook.strip.StripLength;
import java.util.List;
import java.util.stream.IntStream;

/** The frill in the chosen grain: totals, the pieces to cut, and where the joins fall. */
public record FrillWork(
    FrillCut total,
    Shopping shopping,
    List<CutPiece> cutList,
    List<JoinPlace> joins,
    List<JoinWorking> joinWorkings) {

  static FrillWork of(
      Workroom room,
      Sizes sizes,
      Rings rings,
      StripLength strip,
      double baseBuyLength,
      FrillCutting cutting,
      FrillLayouts layouts,
      GrainPlan plan) {
    Brief brief = room.brief();
    Join join = cutting.join(brief.cloth().grain());
    FrillCut total = FrillCut.of(brief, sizes, cutting, layouts, plan);
    List<JoinPlace> joins =
        IntStream.rangeClosed(1, Math.min(JoinPlace.MOST, total.joinCount()))
            .mapToObj(
                n -> {
                  double seam = layouts.netOf(n, plan, join) + join.takeup() / 2;
                  return JoinPlace.of(n, seam, strip.flatLength(), brief, rings);
                })
            .toList();
    return new FrillWork(
        total,
        Shopping.of(brief.unit(), total.buyLength(), baseBuyLength),
        CutPiece.all(sizes, layouts, plan),
        joins,
        joins.stream().map(j -> JoinWorking.of(j.joinMark(), brief, rings)).toList());
  }
}
