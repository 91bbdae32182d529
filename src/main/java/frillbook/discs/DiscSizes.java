package frillbook.discs;

import frillbook.brief.BackStyle;
import frillbook.brief.BaseSpec;
import frillbook.brief.Brief;
import frillbook.brief.MatchingDiscFabric;
import frillbook.cutting.Fabric;
import frillbook.measure.Outline;
import frillbook.measure.Rounding;

/**
 * The discs and back pieces, and how many of each the order takes. Sizes are rounded up to the
 * marking step.
 *
 * @param baseCutDiameter wide enough that the disc still measures diameter + 2 seam allowances
 *     after the rows have drawn it in; trimmed then. 12 in, 1/2 in seams, 4 %: 13 5/8 in
 * @param backCutDiameter diameter + 2 seam allowances, until the sewn base has been measured
 * @param trimmedDiameter of the base once sewn: diameter + 2 seam allowances, as they are
 * @param matchingDiscCount discs cut from the frill fabric, all at the base's size
 * @param baseMatchingCount the same from the base fabric, where the maker likes or the frill fabric
 *     is narrower than one
 * @param backPieceCount whole discs, or two pieces for each cushion
 * @param backPieceHeight of the rectangle a back piece is cut from; its width is the back's
 * @param zipLength the longest sold that ends a seam allowance short of the edge seam on either
 *     side; 0 where none is sewn in or none is so short. 18 in, 1/2 in seams, steps of 2 in: 16 in
 * @param discRadius of a base or a matching disc as cut
 * @param discArea of a base or a matching disc as cut, in the square of the unit
 * @param backArea of the back pieces of one cushion; each of two as half an oval, as wide as the
 *     back
 */
public record DiscSizes(
    double baseCutDiameter,
    double backCutDiameter,
    double trimmedDiameter,
    int matchingDiscCount,
    int baseMatchingCount,
    int backPieceCount,
    double backPieceHeight,
    double zipLength,
    double discRadius,
    double discArea,
    double backArea) {

  public static DiscSizes of(Brief brief) {
    BaseSpec base = brief.base();
    double step = brief.markingStep();
    double sewn = brief.cushion().diameter() + 2 * base.seamAllowance();
    double back = Rounding.upTo(step, sewn);
    int quantity = brief.cushion().quantity();
    double cut = Rounding.upTo(step, sewn / (1 - base.drawIn()));
    double height = Rounding.upTo(step, pieceHeight(base, back));
    int matching = quantity * (base.matchingDiscs() + base.backMatchingDiscs());
    boolean ofFrill = base.matchingDiscFabric() == MatchingDiscFabric.FRILL && fits(brief, cut);
    return new DiscSizes(
        cut,
        back,
        sewn,
        ofFrill ? matching : 0,
        ofFrill ? 0 : matching,
        quantity * base.backStyle().pieces(),
        height,
        zipLength(brief),
        cut / 2,
        Outline.area(cut),
        backArea(base, back, height));
  }

  /** Whether the frill fabric is as wide as {@code disc}. */
  private static boolean fits(Brief brief, double disc) {
    double width = Fabric.of(brief.fabric(), brief.fabric().fabricWidth()).usableWidth();
    return Rounding.settle(width - disc) >= 0;
  }

  /** Back pieces that lie behind each other beside a line of bases. */
  public int backDeep() {
    return Rounding.down(baseCutDiameter / backPieceHeight);
  }

  /** Two halves of an oval {@code back} wide and twice {@code height} high make up that oval. */
  private static double backArea(BaseSpec base, double back, double height) {
    return base.backStyle() == BackStyle.ONE_DISC
        ? Outline.area(back)
        : Outline.area(back) * 2 * height / back;
  }

  private static double zipLength(Brief brief) {
    BaseSpec base = brief.base();
    double room = brief.cushion().diameter() - 2 * base.seamAllowance();
    return base.backStyle() == BackStyle.ZIPPED_HALVES
        ? Math.max(0, Rounding.down(room / base.zipStep()) * base.zipStep())
        : 0;
  }

  private static double pieceHeight(BaseSpec base, double back) {
    return switch (base.backStyle()) {
      case ONE_DISC -> back;
      case ZIPPED_HALVES -> back / 2 + base.zipSeam();
      case OVERLAPPING -> back / 2 + base.backOverlap() / 2 + base.backHem();
    };
  }
}
