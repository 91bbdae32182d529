package frillbook.money;

import frillbook.brief.MoneySpec;
import frillbook.measure.Rounding;

/** Whether sums that belong together lie so far apart that one of them looks mistyped. */
public record FarOff(double most) {

  /** A date typed for a wage is thousands of times the materials; a price may not be under cost. */
  public static boolean isPlausible(
      MoneySpec spec, double materials, Costs costs, Price price, Bargain bargain) {
    FarOff far = new FarOff(spec.farOff());
    return far.together(materials, costs.labourTotal())
        && Rounding.settle(price.netEach() - bargain.lowestNet()) >= 0
        && (bargain.lowestNet() == 0 || far.within(price.netEach(), bargain.lowestNet()));
  }

  /** Work without materials, or materials without work, are compared with nothing. */
  private boolean together(double one, double other) {
    return one == 0 || other == 0 || within(Math.max(one, other), Math.min(one, other));
  }

  private boolean within(double large, double small) {
    return Rounding.settle(most * small - large) >= 0;
  }
}
