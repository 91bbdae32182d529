package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of the list of pieces to cut from the bought frill cloth.
 *
 * @param cutNo from 1
 * @param cutPiece what it is
 * @param cutCount how many
 * @param cutLength of a strip, or the diameter of a disc
 * @param cutWidth of a strip, or the diameter of a disc
 */
public record CutPiece(
    int cutNo, String cutPiece, int cutCount, double cutLength, double cutWidth) {

  static List<CutPiece> all(Sizes sizes, FrillLayouts layouts, GrainPlan plan) {
    double disc = sizes.discs().baseCutDiameter();
    double width = sizes.strip().stripCutWidth();
    List<CutPiece> pieces = new ArrayList<>();
    pieces.add(new CutPiece(1, "overlay disc", sizes.discs().overlayCount(), disc, disc));
    pieces.add(
        new CutPiece(2, "full strip", plan.cut().fullCut(), plan.stripLength(), width));
    layouts
        .oddLengths(plan)
        .forEach(l -> pieces.add(new CutPiece(pieces.size() + 1, "shorter strip", 1, l, width)));
    return List.copyOf(pieces);
  }
}
