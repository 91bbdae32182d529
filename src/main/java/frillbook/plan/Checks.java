package frillbook.plan;

import frillbook.brief.BaseSpec;
import frillbook.brief.Brief;
import frillbook.brief.EdgeFinish;
import frillbook.brief.FillSpec;
import frillbook.brief.FrillSpec;
import frillbook.brief.Grain;
import frillbook.brief.Interfaced;
import frillbook.brief.MatchingDiscFabric;
import frillbook.brief.MoneySpec;
import frillbook.brief.ProfitBasis;
import frillbook.measure.LengthUnit;
import frillbook.measure.Outline;
import frillbook.measure.Rounding;

/**
 * Whether the parts of a sound brief go together. Where no ring fits, strips do not fit, the order
 * is too large or the profit is no possible one, something cannot be planned; the others ask for a
 * second look.
 *
 * @param rowsFit at least one ring lies between centre gap and edge clearance
 * @param discFitsFabric a matching disc meant to be of frill fabric fits its usable width
 * @param stripsFitFabric strips fit it in the chosen grain
 * @param baseFitsFabric bases and backs fit the width of theirs
 * @param orderIsWorkable the order is small enough for the search of a length to find it
 * @param interfacingFits interfacing is as wide as a base, where there is any
 * @param marginIsPossible a profit reckoned as a margin is at most 95 % of the price
 * @param ringsClearInset no raw edge of the gathers reaches the row before
 * @param ringsHaveRoom a presser foot finds room beside it, and the gathers are no thicker than
 *     rings are apart
 * @param edgeHolds no free edge is raw on straight grain, where it frays
 * @param rowsCoverBase from the second ring on the frill reaches the next ring, so that the base
 *     does not show
 * @param gatheringFits no gathering row lies at the raw edge or beyond it
 * @param foamFits foam is no thicker than half the diameter, up to which sizes count it
 * @param planOk whether there is a plan
 */
public record Checks(
    boolean inputsOk,
    boolean rowsFit,
    boolean discFitsFabric,
    boolean stripsFitFabric,
    boolean baseFitsFabric,
    boolean orderIsWorkable,
    boolean interfacingFits,
    boolean marginIsPossible,
    boolean ringsClearInset,
    boolean ringsHaveRoom,
    boolean edgeHolds,
    boolean rowsCoverBase,
    boolean gatheringFits,
    boolean foamFits,
    boolean planOk) {
  /** Buy steps the bare strips may fill; the search tries ten times as many. */
  private static final double MOST_STEPS = 10_000;

  /** A margin of 100 % would ask a price without end. */
  private static final double MOST_MARGIN = .95;

  static Checks of(Brief brief, Sizes sizes) {
    boolean rows = sizes.rows().leaveRoomFor(brief.cushion());
    boolean disc = discFits(brief.base(), sizes);
    boolean strips = sizes.starts().of(brief.fabric().grain()).can();
    boolean base = sizes.baseWidth().baseWidths() == 1;
    boolean workable = workable(brief, sizes);
    boolean clear = clearance(brief) > 0;
    boolean roomy = clearance(brief) >= footRoom(brief.unit()) && !isBulky(brief, sizes);
    boolean holds = brief.fabric().grain() == Grain.BIAS || !isRaw(brief.frill());
    boolean covers = !rows || sizes.cover().covers(brief.cushion(), sizes.rows());
    boolean interfacing = interfacingFits(brief, sizes);
    boolean margin = marginIsPossible(brief.money());
    boolean plan = rows && clear && strips && workable && margin;
    return new Checks(
        true,
        rows,
        disc,
        strips,
        base,
        workable,
        interfacing,
        margin,
        clear,
        !clear || roomy,
        holds,
        covers,
        sizes.gathering().fit(brief),
        foamFits(brief),
        plan);
  }

  /** Whether the frill fabric can be laid out, the rows left out of account. */
  boolean fabricFits() {
    return ringsClearInset && stripsFitFabric && orderIsWorkable;
  }

  /** Discs that are too wide for the frill fabric are counted among those of the base fabric. */
  private static boolean discFits(BaseSpec base, Sizes sizes) {
    return base.matchingDiscFabric() == MatchingDiscFabric.BASE
        || sizes.discs().baseMatchingCount() == 0;
  }

  /** Whether a plan that can be made wants no second look for these. */
  boolean areFine() {
    boolean wide = discFitsFabric && baseFitsFabric && interfacingFits;
    return wide && ringsHaveRoom && edgeHolds && rowsCoverBase && gatheringFits && foamFits;
  }

  private static boolean interfacingFits(Brief brief, Sizes sizes) {
    double room = brief.materials().interfacingWidth() - sizes.discs().baseCutDiameter();
    return brief.materials().interfaced() == Interfaced.NONE || Rounding.settle(room) >= 0;
  }

  private static boolean foamFits(Brief brief) {
    double room = brief.cushion().diameter() / 2 - brief.fill().foamThickness();
    return brief.fill().filling() != FillSpec.Sort.FOAM_DISC || Rounding.settle(room) >= 0;
  }

  /** From the raw edge of a ring's gathers to the row before. */
  private static double clearance(Brief brief) {
    return Rounding.settle(brief.cushion().ringSpacing() - brief.frill().stitchInset());
  }

  /** What a presser foot takes beside the raw edge: 1/4 in or 6 mm. */
  private static double footRoom(LengthUnit unit) {
    return unit == LengthUnit.INCH ? .25 : .6;
  }

  private static boolean isBulky(Brief brief, Sizes sizes) {
    double bulk = sizes.strip().bulk() / 1000 / brief.unit().metres(1);
    return Rounding.settle(bulk - brief.cushion().ringSpacing()) > 0;
  }

  private static boolean isRaw(FrillSpec frill) {
    return frill.edgeFinish() == EdgeFinish.RAW;
  }

  private static boolean marginIsPossible(MoneySpec money) {
    return money.profitBasis() != ProfitBasis.MARGIN || money.profitRate() <= MOST_MARGIN;
  }

  /** Judged by the area rule, before the rows are worked out. */
  private static boolean workable(Brief brief, Sizes sizes) {
    double band = Outline.area(2 * sizes.rows().outerRadius());
    double run =
        band
            / brief.cushion().ringSpacing()
            * brief.frill().fullness()
            * brief.cushion().quantity();
    double length = run * sizes.strip().stripCutWidth() / sizes.usableWidth();
    return length / brief.fabric().buyStep() <= MOST_STEPS;
  }
}
