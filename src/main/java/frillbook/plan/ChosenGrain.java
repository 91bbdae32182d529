package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.ShortStrips;
import frillbook.discs.BaseFabric;
import frillbook.grains.FrillCutting;
import frillbook.grains.GrainPlans;
import frillbook.materials.Interfacing;
import frillbook.offcut.Offcut;
import frillbook.offcut.OnTable;
import frillbook.picture.CutFabric;
import frillbook.picture.FabricPicture;
import frillbook.picture.Guide.GuideJoin;
import frillbook.rows.RingJoins;
import frillbook.rows.RingsOnPaper;
import frillbook.strip.Join;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The frill in the chosen grain: totals, the pieces to cut, where the joins fall, what it all comes
 * to, how it lies, and what is left over.
 *
 * @param frillFabricOrder what to ask for, in yards or metres
 * @param guideJoinCount joins in the first cushion, of those listed
 */
public record ChosenGrain(
    CutTotals total,
    double frillFabricOrder,
    List<CutPiece> cutList,
    List<ShortStrips> shortStrips,
    List<JoinPlace> joins,
    List<JoinsOnPaper> joinsOnPaper,
    RingJoins ringJoins,
    List<JoinWorking> joinWorkings,
    int guideJoinCount,
    Costing costing,
    Offcut offcut,
    FabricPicture picture) {

  static ChosenGrain of(
      SizedBrief sized,
      Sizes sizes,
      Checks checks,
      Frill frill,
      BaseFabric base,
      FrillCutting cutting,
      GrainPlans layouts,
      GrainPlan plan) {
    Brief brief = sized.brief();
    CutTotals total = CutTotals.of(brief, sizes, frill.strip(), cutting, layouts, plan);
    List<JoinPlace> joins = joins(brief, frill, total, cutting, layouts, plan);
    PlannedOrder order =
        new PlannedOrder(
            sized,
            sizes,
            frill.rings(),
            frill.strip(),
            total,
            cutting.usedLength(brief.fabric().grain()),
            Interfacing.of(brief, sizes.discs()));
    OnTable table = onTable(brief, sizes, layouts, plan);
    return new ChosenGrain(
        total,
        total.buyLength() / brief.unit().unitsPerLong(),
        CutPiece.all(sizes, layouts, plan),
        ShortStrips.all(layouts.oddLengths(plan).boxed().toList()),
        joins,
        JoinsOnPaper.all(joins),
        ringJoins(brief, frill, joins, total),
        joins.stream().map(j -> JoinWorking.of(j.joinMark(), brief, frill.rings())).toList(),
        JoinPlace.ofTheFirst(joins).size(),
        Costing.of(order, checks, base),
        Offcut.of(table),
        FabricPicture.of(new CutFabric(brief, table)));
  }

  private static RingJoins ringJoins(
      Brief brief, Frill frill, List<JoinPlace> joins, CutTotals total) {
    List<RingJoins.Place> first = JoinPlace.ofTheFirst(joins);
    boolean all = first.size() < JoinPlace.MOST || total.joinsPlaced() <= JoinPlace.MOST;
    return RingJoins.of(RingsOnPaper.of(brief, frill.rings()), first, all);
  }

  private static List<JoinPlace> joins(
      Brief brief,
      Frill frill,
      CutTotals total,
      FrillCutting cutting,
      GrainPlans layouts,
      GrainPlan plan) {
    Join join = cutting.join(brief.fabric().grain());
    return IntStream.rangeClosed(1, Math.min(JoinPlace.MOST, total.joinsPlaced()))
        .mapToObj(
            n -> {
              double seam = JoinPlace.seam(n, layouts, plan, join);
              return JoinPlace.of(n, seam, frill.strip().flatLength(), brief, frill.rings());
            })
        .toList();
  }

  private static OnTable onTable(Brief brief, Sizes sizes, GrainPlans layouts, GrainPlan plan) {
    return new OnTable(
        brief.fabric().grain(),
        layouts,
        plan,
        sizes.discs(),
        sizes.usableWidth(),
        sizes.strip().stripCutWidth(),
        sizes.cutLineStep());
  }

  /** Joins of the first cushion, of those listed. */
  List<GuideJoin> joinsOfTheFirst() {
    return IntStream.range(0, guideJoinCount)
        .mapToObj(i -> new GuideJoin(joinWorkings.get(i).joinTurns(), joins.get(i).joinMark()))
        .toList();
  }
}
