package frillbook.money;

import frillbook.brief.Brief;
import frillbook.brief.LookSpec;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * About what one cushion would cost a client half a time flatter or fuller and with rings a fifth
 * closer or wider: what grows with the strip or with the rows is scaled, the rest stays. No new
 * layout is sought, but where another choice has the look and the rings as planned, its price is
 * told.
 *
 * @param fullerMorePrice how much more half a time fuller, as a share
 * @param closerMorePrice how much more with rings a fifth closer; 0 where these cannot be sewn
 * @param flatterChoice the choice that is half a time flatter, with rings as planned; 0 for none
 * @param fullerChoice the same of half a time fuller
 * @param looks the closer rings first, those planned second
 */
public record LookPrices(
    double fullerMorePrice,
    double closerMorePrice,
    int flatterChoice,
    int fullerChoice,
    List<AtSpacing> looks) {
  private static final double FULLER = .5;

  /** With rings so far apart; nothing for a look that cannot be made. */
  public record AtSpacing(
      double lookSpacing,
      OptionalDouble flatterPrice,
      OptionalDouble samePrice,
      OptionalDouble fullerPrice) {}

  /**
   * Another choice that a client is offered.
   *
   * @param number 2 or 3
   * @param price of one; none where it cannot be made
   */
  public record Offered(int number, LookSpec look, OptionalDouble price) {
    private boolean is(LookSpec other) {
      return Rounding.settle(look.fullness() - other.fullness()) == 0
          && Rounding.settle(look.spacing() - other.spacing()) == 0;
    }
  }

  /**
   * The order as planned.
   *
   * @param stitchedLength of one cushion
   * @param flatLength of one cushion
   * @param band from the centre gap to the outermost row
   * @param others the other choices, those left out excepted
   */
  public record Planned(
      double stitchedLength,
      double flatLength,
      double band,
      Costs costs,
      LookCosts grows,
      Price price,
      List<Offered> others) {}

  public static LookPrices of(Brief brief, Planned planned) {
    var estimate = new Estimate(brief, planned);
    List<AtSpacing> looks = IntStream.rangeClosed(1, 3).mapToObj(estimate::atSpacing).toList();
    return new LookPrices(
        estimate.more(looks.get(1).fullerPrice()),
        estimate.more(looks.get(0).samePrice()),
        estimate.choice(-FULLER),
        estimate.choice(FULLER),
        looks);
  }

  private record Estimate(Brief brief, Planned planned) {
    AtSpacing atSpacing(int step) {
      LookSpec own = brief.look();
      double spacing = own.spacing() * (1 + (step - 2) / 5.0);
      return new AtSpacing(
          spacing,
          at(step, -FULLER, spacing),
          step == 2
              ? OptionalDouble.of(planned.price().priceEach())
              : price(new LookSpec(own.fullness(), spacing)),
          at(step, FULLER, spacing));
    }

    private OptionalDouble at(int step, double fuller, double spacing) {
      int choice = step == 2 ? choice(fuller) : 0;
      return choice == 0
          ? price(new LookSpec(brief.look().fullness() + fuller, spacing))
          : offered(fuller).findFirst().orElseThrow().price();
    }

    int choice(double fuller) {
      return offered(fuller).mapToInt(Offered::number).findFirst().orElse(0);
    }

    private Stream<Offered> offered(double fuller) {
      LookSpec own = brief.look();
      LookSpec look = new LookSpec(own.fullness() + fuller, own.spacing());
      return planned.others().stream().filter(other -> other.is(look));
    }

    private OptionalDouble price(LookSpec look) {
      return canBeMade(look) ? OptionalDouble.of(asked(cost(look))) : OptionalDouble.empty();
    }

    private boolean canBeMade(LookSpec look) {
      return look.isGathered()
          && look.clears(brief.frill().stitchInset())
          && Rounding.settle(planned.band() - look.spacing()) >= 0;
    }

    private double cost(LookSpec look) {
      double rows = brief.look().spacing() / look.spacing();
      double flat =
          planned.stitchedLength() * rows * look.fullness() + brief.frill().endAllowance();
      double more =
          planned.grows().stripCost() * (flat / planned.flatLength() - 1)
              + planned.grows().rowCost() * (rows - 1);
      return planned.costs().costTotal() + (1 + brief.money().overheadRate()) * more;
    }

    private double asked(double cost) {
      Money money = Money.in(brief.money().currencyCode());
      int quantity = brief.cushion().quantity();
      return Price.beside(money, brief.money(), cost, quantity, planned.costs().costTotal())
          .priceEach();
    }

    double more(OptionalDouble asked) {
      double own = planned.price().priceEach();
      return own > 0 && asked.isPresent() ? asked.getAsDouble() / own - 1 : 0;
    }
  }
}
