package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.FrillCutting;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.Join;
import frillbook.rows.Rings;
import frillbook.strip.StripLength;
import java.util.List;

/** The frill in the chosen grain: totals, the pieces to cut, and where the joins fall. */
public record FrillWork(FrillCut total, List<CutPiece> cutList, List<JoinPlace> joins) {

  static FrillWork of(
      Workroom room,
      Sizes sizes,
      Rings rings,
      StripLength strip,
      FrillCutting cutting,
      FrillLayouts layouts,
      GrainPlan plan) {
    Brief brief = room.brief();
    Join join = cutting.join(brief.cloth().grain());
    return new FrillWork(
        FrillCut.of(brief, cutting, layouts, plan),
        CutPiece.all(sizes, layouts, plan),
        JoinPlace.all(brief, rings, strip.flatLength(), layouts, plan, join));
  }
}
