package frillbook.cutting;

import frillbook.brief.FabricSpec;
import frillbook.measure.Rounding;
import frillbook.strip.Join;

/**
 * One fabric as it can be cut.
 *
 * @param usableWidth between the selvages, after washing
 * @param usableShare of a bought length that is left after washing
 * @param buyStep lengths are bought in whole numbers of these
 * @param squaring lost once of every bought length, in straightening both its cut ends
 */
public record Fabric(double usableWidth, double usableShare, double buyStep, double squaring) {

  /** A fabric whose cut ends are straight already. */
  public Fabric(double usableWidth, double usableShare, double buyStep) {
    this(usableWidth, usableShare, buyStep, 0);
  }

  /** A fabric {@code fabricWidth} wide under the shop habits of {@code spec}. */
  public static Fabric of(FabricSpec spec, double fabricWidth) {
    return new Fabric(
        (fabricWidth - 2 * spec.selvage()) * (1 - spec.washShrinkWidth()),
        1 - spec.washShrinkLength(),
        spec.buyStep(),
        spec.squaringAllowance());
  }

  /** What can be cut of {@code bought}, washed and its ends straightened: 45 at 0.8 less 2, 34. */
  public double usable(double bought) {
    return Math.max(0, bought * usableShare - squaring);
  }

  /** The length to buy so that {@code used} is left when it is washed and its ends straightened. */
  public double buyLengthFor(double used) {
    return boughtFor(used + squaring);
  }

  /**
   * Area of {@code pieces} over the usable width, rounded up to the buy step. What straightening
   * takes is not in it: a fabric torn along its weave has nothing to lose.
   */
  public double lowerBound(Pieces pieces, Join join) {
    return boughtFor(pieces.area(join.gain()) / usableWidth);
  }

  private double boughtFor(double washed) {
    return Rounding.upTo(buyStep, washed / usableShare);
  }
}
