package frillbook.materials;

import frillbook.brief.BackStyle;
import frillbook.brief.Brief;
import frillbook.brief.MassSpec;
import frillbook.discs.DiscSizes;
import frillbook.measure.LengthUnit;
import frillbook.measure.Outline;

/**
 * What one finished cushion weighs, in grams, for posting. Thread, zip and the maker's own
 * materials are left out; trimmings are left in.
 *
 * @param frillMass frill and overlays
 * @param baseMass base and back
 * @param interfacingPart interfacing
 * @param finishedMass all of these and the filling
 */
public record Mass(double frillMass, double baseMass, double interfacingPart, double finishedMass) {

  /**
   * @param stripArea cut for one cushion's frill, in the unit of the brief squared
   * @param fill of one cushion, in grams
   */
  public static Mass of(Brief brief, DiscSizes discs, double stripArea, double fill) {
    LengthUnit unit = brief.unit();
    MassSpec spec = brief.materials().masses();
    double disc = Outline.area(discs.baseCutDiameter());
    double frillArea = stripArea + brief.base().overlays() * disc;
    double interfacingArea = brief.materials().interfaced().discs() * disc;
    double frill = grams(unit, frillArea, spec.frillClothMass());
    double base = grams(unit, disc + backArea(brief, discs), spec.baseClothMass());
    double interfacing = grams(unit, interfacingArea, spec.interfacingMass());
    return new Mass(frill, base, interfacing, frill + base + interfacing + fill);
  }

  /** {@code area} of a cloth of {@code density} g/m²; 1296 in² of 33.90575 g/m² weigh 28.35 g. */
  static double grams(LengthUnit unit, double area, double density) {
    return unit.squareMetres(area) * density;
  }

  /** A piece of a back in two is taken as half of a long round, as wide and twice as high. */
  private static double backArea(Brief brief, DiscSizes discs) {
    double back = discs.backCutDiameter();
    boolean whole = brief.base().backStyle() == BackStyle.ONE_DISC;
    return whole ? Outline.area(back) : Math.PI / 4 * back * 2 * discs.backPieceHeight();
  }
}
