package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.measure.Rounding;
import frillbook.money.Money;
import java.util.Optional;

/**
 * Everything that follows from a brief, under the same names as in the workbook.
 *
 * @param tiny lengths closer together than this count as equal
 * @param moneyPlaces decimals of the currency (ISO 4217); all money is rounded to them
 * @param lengthUnit of every length
 * @param lengthFound false where no length of cloth holds strips and spares in the chosen grain
 * @param checkFlag STOP without a plan, MIND where something wants thought, else READY
 * @param work the worked-out plan; empty where a check says that there is none
 */
public record Plan(
    double tiny,
    int moneyPlaces,
    String lengthUnit,
    Sizes sizes,
    Checks checks,
    boolean lengthFound,
    String checkFlag,
    Optional<Work> work) {

  /** The plan for {@code brief}, whose inputs lie in their ranges. */
  public static Plan of(Brief brief) {
    Workroom room = Workroom.of(brief);
    Sizes sizes = Sizes.of(room);
    Checks checks = Checks.of(brief, sizes);
    Optional<Work> work = checks.planOk() ? Optional.of(Work.of(room, sizes)) : Optional.empty();
    int places = Money.in(brief.money().currencyCode()).places();
    boolean found = work.map(Work::cutOk).orElse(true);
    return new Plan(
        Rounding.TINY,
        places,
        brief.unit().symbol(),
        sizes,
        checks,
        found,
        flag(checks, found),
        work);
  }

  private static String flag(Checks checks, boolean found) {
    if (!checks.planOk() || !found) {
      return "STOP";
    }
    return checks.rowsCoverBase() ? "READY" : "MIND";
  }
}
