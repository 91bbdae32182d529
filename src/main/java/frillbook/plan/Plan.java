package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.BaseCloth;
import frillbook.fill.Filling;
import frillbook.measure.Rounding;
import frillbook.money.Money;
import frillbook.picture.Guide.GuideJoin;
import frillbook.picture.Side;
import java.util.List;
import java.util.Optional;

/**
 * Everything that follows from a brief, under the same names as in the workbook. A check that does
 * not hold keeps back the parts of the work it is about, and no others.
 *
 * @param tiny lengths closer together than this count as equal
 * @param moneyPlaces decimals of the currency (ISO 4217); all money is rounded to them
 * @param lengthUnit of every length
 * @param guards how far the plan goes
 * @param lengthFound false where no length of cloth holds strips and spares in the chosen grain
 * @param checkFlag STOP without a plan, MIND where something wants thought, else READY
 * @param rows the flower; empty where no ring fits
 * @param base empty where bases or backs do not fit their cloth
 * @param cutting the cutting and all that follows; empty where a check says that there is none
 */
public record Plan(
    double tiny,
    int moneyPlaces,
    String lengthUnit,
    Sizes sizes,
    Checks checks,
    Guards guards,
    boolean lengthFound,
    String checkFlag,
    Filling filling,
    Side side,
    Optional<RowWork> rows,
    Optional<BaseWork> base,
    Optional<GrainsCompared> cutting) {

  /** The plan for {@code brief}, whose inputs lie in their ranges. */
  public static Plan of(Brief brief) {
    SizedBrief sized = SizedBrief.of(brief);
    Sizes sizes = Sizes.of(sized);
    Checks checks = Checks.of(brief, sizes);
    Optional<Frill> frill = when(checks.rowsFit(), sized).map(Frill::of);
    Optional<BaseWork> base =
        when(checks.baseFitsCloth(), sized).map(fitting -> BaseWork.of(fitting, sizes));
    Optional<BaseCloth> cloth = base.map(BaseWork::base);
    Optional<GrainsCompared> cutting =
        frill
            .filter(f -> checks.clothFits())
            .map(f -> GrainsCompared.of(sized, sizes, checks, f, cloth));
    List<GuideJoin> joins =
        cutting.flatMap(GrainsCompared::cut).map(ChosenGrain::joinsOfTheFirst).orElse(List.of());
    Filling filling = Filling.of(brief);
    boolean found = cutting.map(GrainsCompared::cutOk).orElse(true);
    return new Plan(
        Rounding.TINY,
        Money.in(brief.money().currencyCode()).places(),
        brief.unit().symbol(),
        sizes,
        checks,
        Guards.of(brief.choices(), checks, cutting.map(GrainsCompared::cutOk).orElse(false)),
        found,
        flag(checks, found),
        filling,
        Side.of(brief, filling),
        frill.map(f -> RowWork.of(sized, f, joins)),
        base,
        cutting);
  }

  private static Optional<SizedBrief> when(boolean fits, SizedBrief sized) {
    return fits ? Optional.of(sized) : Optional.empty();
  }

  private static String flag(Checks checks, boolean found) {
    if (!checks.planOk() || !found) {
      return "STOP";
    }
    return checks.rowsCoverBase() ? "READY" : "MIND";
  }
}
