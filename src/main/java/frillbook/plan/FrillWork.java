package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.FrillCutting;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.Join;
import frillbook.discs.BaseCloth;
import frillbook.materials.Interfacing;
import frillbook.picture.Pictures;
import frillbook.rows.Rings;
import frillbook.strip.StripLength;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The frill in the chosen grain: totals, the pieces to cut, where the joins fall, what it all comes
 * to, and how it looks.
 */
public record FrillWork(
    FrillCut total,
    Shopping shopping,
    List<CutPiece> cutList,
    List<ShortStrips> shortStrips,
    List<JoinPlace> joins,
    List<JoinsOnPaper> joinsOnPaper,
    List<JoinWorking> joinWorkings,
    Costing costing,
    Pictures pictures) {

  static FrillWork of(
      Workroom room,
      Sizes sizes,
      Rings rings,
      StripLength strip,
      BaseCloth base,
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
    List<JoinWorking> workings =
        joins.stream().map(j -> JoinWorking.of(j.joinMark(), brief, rings)).toList();
    Job job =
        new Job(
            room,
            sizes,
            rings,
            strip,
            base,
            total,
            cutting.usedLength(brief.cloth().grain()),
            Interfacing.of(brief, sizes.discs()));
    Costing costing = Costing.of(job);
    return new FrillWork(
        total,
        Shopping.of(brief.unit(), total.buyLength(), base.baseBuyLength()),
        CutPiece.all(sizes, layouts, plan),
        ShortStrips.all(layouts.oddLengths(plan).boxed().toList()),
        joins,
        JoinsOnPaper.all(joins),
        workings,
        costing,
        new PictureSource(job, layouts, plan, costing, joins, workings).draw());
  }
}
