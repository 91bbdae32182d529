package frillbook.strip;

import frillbook.brief.Brief;
import frillbook.brief.EdgeFinish;
import frillbook.brief.FrillSpec;
import frillbook.brief.Grain;
import frillbook.brief.JoinFinish;
import frillbook.brief.JoinSpec;
import frillbook.measure.Rounding;

/**
 * The cross-section of the strip and what a seam between two strips takes.
 *
 * @param bulk of the gathers at one row, in millimetres: fullness × thickness, of both layers where
 *     the strip is folded
 * @param edgeAllowance what the free edge takes of the strip's width
 * @param plannedWidth what the frill takes of the strip's width: 2 in high, inset 1/4, raw: 2 1/4
 *     in
 * @param biasNarrowing width over cut width of a bias strip that has stretched, 1 where none does
 * @param straightCutWidth of strips on straight grain: the planned width rounded up to the marking
 *     step
 * @param biasCutWidth of bias strips, which are cut wider where they narrow: 2 1/4 in ÷ 0.8635 is
 *     2.606, cut 2 5/8 in wide
 * @param stripCutWidth of the chosen grain
 * @param stretchedWidth what is left of it when the strip has stretched
 * @param stripStretches whether it does: a bias strip, where these lengthen at all
 * @param seamLoss length a square seam takes of two strips together: both allowances of both edges
 */
public record StripSizes(
    double bulk,
    double edgeAllowance,
    double plannedWidth,
    double biasNarrowing,
    double straightCutWidth,
    double biasCutWidth,
    double stripCutWidth,
    double stretchedWidth,
    boolean stripStretches,
    double seamLoss) {

  public static StripSizes of(Brief brief) {
    FrillSpec frill = brief.frill();
    double allowance = edgeAllowance(frill);
    double layer = frill.frillHeight() + frill.stitchInset() + allowance;
    boolean isFolded = frill.edgeFinish() == EdgeFinish.FOLDED;
    double width = isFolded ? 2 * layer : layer;
    double narrowing = narrowing(brief.fabric().biasStretch());
    double straight = Rounding.upTo(brief.markingStep(), width);
    double bias = Rounding.upTo(brief.markingStep(), width / narrowing);
    boolean isBias = brief.fabric().grain() == Grain.BIAS;
    return new StripSizes(
        frill.fullness() * brief.fabric().fabricThickness() * (isFolded ? 2 : 1),
        allowance,
        width,
        narrowing,
        straight,
        bias,
        isBias ? bias : straight,
        isBias ? bias * narrowing : straight,
        isBias && brief.fabric().biasStretch() > 0,
        seamLoss(brief.joins()));
  }

  /**
   * Width over cut width of a bias strip that is {@code stretch} longer than cut: √(2 − (1 + e)²).
   *
   * <p>Woven fabric is a net of threads of fixed length, pinned where they cross. On the bias a
   * mesh is a rhombus whose diagonals lie along and across the strip, and (L′/L)² + (W′/W)² stays
   * 2. A strip 12 % longer is 0.8635 as wide; at √2 − 1, 41 %, the threads would lie side by side.
   */
  static double narrowing(double stretch) {
    return Math.sqrt(2 - (1 + stretch) * (1 + stretch));
  }

  /** Cut width of the strips in {@code grain}. */
  public double cutWidth(Grain grain) {
    return grain == Grain.BIAS ? biasCutWidth : straightCutWidth;
  }

  private static double edgeAllowance(FrillSpec frill) {
    return switch (frill.edgeFinish()) {
      case RAW, PINKED, FOLDED -> 0;
      case NARROW_HEM -> frill.hemTurns();
      case OVERLOCKED, ROLLED -> frill.overlockTrim();
    };
  }

  private static double seamLoss(JoinSpec joins) {
    boolean twice = joins.joinFinish() == JoinFinish.FRENCH;
    return 2 * (joins.joinAllowance() + (twice ? joins.joinSecondAllowance() : 0));
  }
}
