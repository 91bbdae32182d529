package frillbook.strip;

import frillbook.brief.Brief;
import frillbook.brief.EdgeFinish;
import frillbook.brief.FrillSpec;
import frillbook.brief.JoinFinish;
import frillbook.brief.JoinSpec;
import frillbook.measure.Rounding;

/**
 * The cross-section of the strip and what a seam between two strips takes.
 *
 * @param coverRatio frill height over ring spacing; under about 1.5 the base shows between rings
 *     (common practice, no source)
 * @param edgeAllowance what the free edge takes of the strip's width
 * @param stripCutWidth rounded up to the marking step: 2 in high, inset 1/4, raw: 2 1/4 in
 * @param seamLoss length a square seam takes of two strips together: both allowances of both edges
 */
public record StripSizes(
    double coverRatio, double edgeAllowance, double stripCutWidth, double seamLoss) {

  public static StripSizes of(Brief brief) {
    FrillSpec frill = brief.frill();
    double allowance = edgeAllowance(frill);
    double layer = frill.frillHeight() + frill.stitchInset() + allowance;
    double width = frill.edgeFinish() == EdgeFinish.FOLDED ? 2 * layer : layer;
    return new StripSizes(
        frill.frillHeight() / brief.cushion().ringSpacing(),
        allowance,
        Rounding.upTo(brief.markingStep(), width),
        seamLoss(brief.joins()));
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
