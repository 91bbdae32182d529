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
 */
public record Fabric(double usableWidth, double usableShare, double buyStep) {

  /** A fabric {@code fabricWidth} wide under the shop habits of {@code spec}. */
  public static Fabric of(FabricSpec spec, double fabricWidth) {
    return new Fabric(
        (fabricWidth - 2 * spec.selvage()) * (1 - spec.washShrinkWidth()),
        1 - spec.washShrinkLength(),
        spec.buyStep());
  }

  /** The length to buy so that {@code used} is left after washing. */
  public double buyLengthFor(double used) {
    return Rounding.upTo(buyStep, used / usableShare);
  }

  /** Area of {@code pieces} over the usable width, rounded up to the buy step. */
  public double lowerBound(Pieces pieces, Join join) {
    return buyLengthFor(pieces.area(join.gain()) / usableWidth);
  }
}
