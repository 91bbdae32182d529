package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.FrillCutting;
import frillbook.cutting.FrillLayouts;
import frillbook.discs.BaseCloth;
import frillbook.rows.Rings;
import frillbook.rows.RingsOnPaper;
import frillbook.strip.StripLength;
import java.util.List;
import java.util.Optional;

/**
 * The plan of a brief whose parts go together.
 *
 * @param base bases and backs on their cloth
 * @param cutOk whether a length of frill cloth was found in the chosen grain
 * @param cut what follows from it
 */
public record Work(
    Rings rings,
    StripLength strip,
    SewingMarks marks,
    RingsOnPaper paper,
    BaseCloth base,
    FrillLayouts layouts,
    List<GrainRow> grains,
    boolean cutOk,
    Optional<FrillWork> cut) {

  static Work of(Workroom room, Sizes sizes) {
    Brief brief = room.brief();
    Rings rings = Rings.of(brief, room.rows());
    StripLength strip = StripLength.of(brief, rings.stitchedLength());
    FrillCutting cutting = room.cuttingOf(strip.orderFlatLength());
    FrillLayouts layouts = FrillLayouts.of(cutting, sizes.starts(), brief.cloth().grain());
    BaseCloth base = BaseCloth.of(brief, room.discs(), room.baseCloth());
    Optional<FrillWork> cut =
        layouts
            .plan(brief.cloth().grain())
            .map(plan -> FrillWork.of(room, sizes, rings, strip, base, cutting, layouts, plan));
    return new Work(
        rings,
        strip,
        SewingMarks.of(rings, strip),
        RingsOnPaper.of(rings),
        base,
        layouts,
        GrainRow.all(layouts),
        cut.isPresent(),
        cut);
  }
}
