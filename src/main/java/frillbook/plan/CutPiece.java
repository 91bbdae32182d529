package frillbook.plan;

import frillbook.cutting.GrainPlan;
import frillbook.grains.GrainPlans;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One line of the list of pieces to cut from the bought frill fabric.
 *
 * @param cutPiece what it is
 * @param cutCount how many; 0 where there are none
 * @param size none where there are none
 */
public record CutPiece(Piece cutPiece, int cutCount, Optional<Size> size) {

  /**
   * @param cutLength of a strip, or the diameter of a disc
   * @param cutWidth of a strip, or the diameter of a disc
   */
  public record Size(double cutLength, double cutWidth) {}

  static List<CutPiece> all(Sizes sizes, GrainPlans layouts, GrainPlan plan) {
    double disc = sizes.discs().baseCutDiameter();
    double width = sizes.strip().stripCutWidth();
    List<CutPiece> pieces = new ArrayList<>();
    pieces.add(of(Piece.MATCHING_DISC, sizes.discs().matchingDiscCount(), disc, disc));
    pieces.add(of(Piece.FULL_STRIP, plan.cut().all().full(), plan.stripLength(), width));
    layouts
        .oddLengths(plan)
        .forEach(length -> pieces.add(of(Piece.SHORTER_STRIP, 1, length, width)));
    return List.copyOf(pieces);
  }

  private static CutPiece of(Piece piece, int count, double length, double width) {
    Optional<Size> size = count == 0 ? Optional.empty() : Optional.of(new Size(length, width));
    return new CutPiece(piece, count, size);
  }
}
