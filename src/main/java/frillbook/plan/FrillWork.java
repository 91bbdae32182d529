package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.FrillCutting;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.Join;
import frillbook.discs.BaseCloth;
import frillbook.materials.Interfacing;
import frillbook.picture.ClothPicture;
import frillbook.picture.CutCloth;
import frillbook.picture.Guide.GuideJoin;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The frill in the chosen grain: totals, the pieces to cut, where the joins fall, what it all comes
 * to, and how it lies.
 *
 * @param frillClothOrder what to ask for, in yards or metres
 * @param guideJoinCount joins in the first cushion, of those listed
 */
public record FrillWork(
    FrillCut total,
    double frillClothOrder,
    List<CutPiece> cutList,
    List<ShortStrips> shortStrips,
    List<JoinPlace> joins,
    List<JoinsOnPaper> joinsOnPaper,
    List<JoinWorking> joinWorkings,
    int guideJoinCount,
    Costing costing,
    ClothPicture picture) {

  static FrillWork of(
      Workroom room,
      Sizes sizes,
      Checks checks,
      Frill frill,
      Optional<BaseCloth> base,
      FrillCutting cutting,
      FrillLayouts layouts,
      GrainPlan plan) {
    Brief brief = room.brief();
    FrillCut total = FrillCut.of(brief, sizes, cutting, layouts, plan);
    List<JoinPlace> joins = joins(brief, frill, total, cutting, layouts, plan);
    Job job =
        new Job(
            room,
            sizes,
            frill.rings(),
            frill.strip(),
            total,
            cutting.usedLength(brief.cloth().grain()),
            Interfacing.of(brief, sizes.discs()));
    return new FrillWork(
        total,
        total.buyLength() / brief.unit().unitsPerLong(),
        CutPiece.all(sizes, layouts, plan),
        ShortStrips.all(layouts.oddLengths(plan).boxed().toList()),
        joins,
        JoinsOnPaper.all(joins),
        joins.stream().map(j -> JoinWorking.of(j.joinMark(), brief, frill.rings())).toList(),
        (int) joins.stream().filter(j -> j.joinCushion() == 1).count(),
        Costing.of(job, checks, base),
        picture(brief, sizes, layouts, plan));
  }

  private static List<JoinPlace> joins(
      Brief brief,
      Frill frill,
      FrillCut total,
      FrillCutting cutting,
      FrillLayouts layouts,
      GrainPlan plan) {
    Join join = cutting.join(brief.cloth().grain());
    return IntStream.rangeClosed(1, Math.min(JoinPlace.MOST, total.joinCount()))
        .mapToObj(
            n -> {
              double seam = layouts.netOf(n, plan, join) + join.takeup() / 2;
              return JoinPlace.of(n, seam, frill.strip().flatLength(), brief, frill.rings());
            })
        .toList();
  }

  private static ClothPicture picture(
      Brief brief, Sizes sizes, FrillLayouts layouts, GrainPlan plan) {
    return ClothPicture.of(
        new CutCloth(
            brief,
            layouts,
            plan,
            sizes.discs(),
            sizes.usableWidth(),
            sizes.strip().stripCutWidth(),
            sizes.cutLineStep()));
  }

  /** Joins of the first cushion, of those listed. */
  List<GuideJoin> joinsOfTheFirst() {
    return IntStream.range(0, guideJoinCount)
        .mapToObj(i -> new GuideJoin(joinWorkings.get(i).joinTurns(), joins.get(i).joinMark()))
        .toList();
  }
}
