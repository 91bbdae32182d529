package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.fill.Filling;
import frillbook.measure.Rounding;
import frillbook.money.Money;
import frillbook.naming.Coded;
import frillbook.picture.Flower;
import frillbook.picture.Guide.GuideJoin;
import frillbook.picture.Side;
import java.util.List;
import java.util.Optional;

/**
 * Everything that follows from a brief, under the same names as in the workbook. A check that does
 * not hold keeps back the parts of the work it is about, and no others.
 *
 * @param tiny lengths closer together than this count as equal
 * @param metresPerUnit of every length: 0.0254 for inches, 0.01 for centimetres
 * @param moneyPlaces decimals of the currency (ISO 4217); all money is rounded to them
 * @param lengthUnit of every length
 * @param guards how far the plan goes
 * @param lengthFound false where no length of fabric holds strips and spares in the chosen grain
 * @param grainIsCheap false where another grain is cheaper by the share that the maker wants told
 * @param ownStripsAreLean false where strips of each cushion take much more fabric than they must
 * @param priceIsPlausible whether no wage, price or step of it looks mistyped
 * @param priceIsUntouched always: in a workbook a price may be typed over
 * @param choicesAgree whether words, figures and prices of the other choices go together
 * @param checkFlag what all checks come to
 * @param rows the flower; empty where no ring fits
 * @param flower as it is drawn; nothing where no ring fits
 * @param cutting the cutting and all that follows; empty where a check says that there is none
 */
public record Plan(
    double tiny,
    double metresPerUnit,
    int moneyPlaces,
    String lengthUnit,
    Sizes sizes,
    Checks checks,
    Guards guards,
    boolean lengthFound,
    boolean grainIsCheap,
    boolean ownStripsAreLean,
    boolean priceIsPlausible,
    boolean priceIsUntouched,
    boolean choicesAgree,
    Flag checkFlag,
    Filling filling,
    Side side,
    Optional<RowWork> rows,
    Flower flower,
    BaseWork base,
    Optional<GrainsCompared> cutting) {

  /** Whether the plan can be used. */
  public enum Flag implements Coded {
    READY,
    /** Something wants a second look. */
    LOOK_AGAIN,
    /** There is no plan. */
    STOP
  }

  /** The plan for {@code brief}, whose inputs lie in their ranges. */
  public static Plan of(Brief brief) {
    SizedBrief sized = SizedBrief.of(brief);
    Sizes sizes = Sizes.of(sized);
    Checks checks = Checks.of(brief, sizes);
    Optional<Frill> frill = checks.rowsFit() ? Optional.of(Frill.of(sized)) : Optional.empty();
    BaseWork base = BaseWork.of(sized, sizes);
    Optional<GrainsCompared> cutting =
        frill
            .filter(f -> checks.fabricFits())
            .map(f -> GrainsCompared.of(sized, sizes, checks, f, base.base()));
    List<GuideJoin> joins =
        cutting.flatMap(GrainsCompared::cut).map(ChosenGrain::joinsOfTheFirst).orElse(List.of());
    Filling filling = Filling.of(brief);
    Optional<RowWork> rows = frill.map(f -> RowWork.of(sized, f, joins));
    double share = brief.money().cheaperShare();
    boolean cheap = cutting.map(c -> c.prices().chosenIsCheap(share)).orElse(true);
    boolean lean =
        cutting.flatMap(GrainsCompared::cut).map(c -> c.total().isLean(brief)).orElse(true);
    Optional<Costing> costing = cutting.flatMap(GrainsCompared::cut).map(ChosenGrain::costing);
    boolean plausible =
        costing.map(Costing::bill).map(b -> b.isPlausible(brief.money())).orElse(true);
    boolean agree = costing.map(c -> c.twoDoubt() + c.threeDoubt() == 0).orElse(true);
    boolean found = cutting.map(GrainsCompared::cutOk).orElse(true);
    return new Plan(
        Rounding.TINY,
        brief.unit().metres(1),
        Money.in(brief.money().currencyCode()).places(),
        brief.unit().symbol(),
        sizes,
        checks,
        Guards.of(brief.choices(), checks, cutting.map(GrainsCompared::cutOk).orElse(false)),
        found,
        cheap,
        lean,
        plausible,
        true,
        agree,
        flag(checks, found, cheap && lean && plausible && agree),
        filling,
        Side.of(brief, filling),
        rows,
        Flower.of(rows.map(RowWork::flower), rows.map(r -> r.ripple().rippleDepth()).orElse(0.0)),
        base,
        cutting);
  }

  private static Flag flag(Checks checks, boolean found, boolean cutWell) {
    if (!checks.planOk() || !found) {
      return Flag.STOP;
    }
    return checks.areFine() && cutWell ? Flag.READY : Flag.LOOK_AGAIN;
  }
}
