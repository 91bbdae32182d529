package frillbook.materials;

import frillbook.brief.Brief;
import frillbook.brief.WeightSpec;
import frillbook.discs.DiscSizes;
import frillbook.measure.LengthUnit;

/**
 * What one finished cushion weighs, in grams, for posting. Thread, zip and the maker's own
 * materials are left out; trimmings are left in.
 *
 * @param frillWeight frill, and matching discs cut from its fabric
 * @param baseWeight base and back, and matching discs cut from their fabric
 * @param interfacingPart interfacing
 * @param finishedWeight all of these and the filling
 */
public record Weight(
    double frillWeight, double baseWeight, double interfacingPart, double finishedWeight) {

  /**
   * @param stripArea cut for one cushion's frill, in the unit of the brief squared
   * @param fill of one cushion, in grams
   */
  public static Weight of(Brief brief, DiscSizes discs, double stripArea, double fill) {
    LengthUnit unit = brief.unit();
    WeightSpec spec = brief.materials().weights();
    double disc = discs.discArea();
    double quantity = brief.cushion().quantity();
    double frillArea = stripArea + discs.matchingDiscCount() / quantity * disc;
    double baseArea = (1 + discs.baseMatchingCount() / quantity) * disc + discs.backArea();
    double interfacingArea = brief.materials().interfaced().discs() * disc;
    double frill = grams(unit, frillArea, spec.frillFabricWeight());
    double base = grams(unit, baseArea, spec.baseFabricWeight());
    double interfacing = grams(unit, interfacingArea, spec.interfacingWeight());
    return new Weight(frill, base, interfacing, frill + base + interfacing + fill);
  }

  /** {@code area} of a fabric of {@code density} g/m²; 1296 in² of 33.90575 g/m² weigh 28.35 g. */
  static double grams(LengthUnit unit, double area, double density) {
    return unit.squareMetres(area) * density;
  }
}
