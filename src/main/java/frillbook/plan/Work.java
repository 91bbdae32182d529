package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.FrillCutting;
import frillbook.cutting.FrillLayouts;
import frillbook.discs.BaseCloth;
import java.util.List;
import java.util.Optional;

/**
 * The cutting of a brief whose rows, strips and overlays go together.
 *
 * @param cutOk whether a length of frill cloth was found in the chosen grain
 * @param cut what follows from it
 */
public record Work(
    FrillLayouts layouts, List<GrainRow> grains, boolean cutOk, Optional<FrillWork> cut) {

  /** {@code base} is empty where bases or backs do not fit their cloth. */
  static Work of(Workroom room, Sizes sizes, Checks checks, Frill frill, Optional<BaseCloth> base) {
    Brief brief = room.brief();
    FrillCutting cutting = room.cuttingOf(frill.strip().orderFlatLength());
    FrillLayouts layouts = FrillLayouts.of(cutting, sizes.starts(), brief.cloth().grain());
    Optional<FrillWork> cut =
        layouts
            .plan(brief.cloth().grain())
            .map(plan -> FrillWork.of(room, sizes, checks, frill, base, cutting, layouts, plan));
    return new Work(layouts, GrainRow.all(layouts), cut.isPresent(), cut);
  }
}
