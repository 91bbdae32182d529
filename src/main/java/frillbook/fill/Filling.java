package frillbook.fill;

import frillbook.brief.Brief;
import frillbook.brief.FillSpec;
import frillbook.measure.Rounding;

/**
 * What goes into the cushions and what it does to their size. Per cushion unless said otherwise;
 * lengths in the unit of the brief.
 *
 * @param flatRadius half the diameter of the flat cushion
 * @param limitDiameter across, filled to the limit: flat 45 cm, 34.3 cm
 * @param limitThickness through the middle, filled to the limit: flat 45 cm, 20.6 cm
 * @param limitVolume in litres, filled to the limit: flat 45 cm, 13.9 L
 * @param readsSmaller by how much a cushion filled to the limit is narrower than flat
 * @param filledDiameter at the chosen fill, on a straight line from flat to the limit: an estimate,
 *     no source
 * @param filledThickness the same for the thickness
 * @param fillVolume in litres
 * @param fillEach in grams
 * @param fillWeight in grams, for all cushions
 * @param fillBags to buy for all cushions
 * @param padSize of a ready pad that fills the cover: the flat size and the extra, rounded up to a
 *     size that is sold
 */
public record Filling(
    double flatRadius,
    double limitDiameter,
    double limitThickness,
    double limitVolume,
    double readsSmaller,
    double filledDiameter,
    double filledThickness,
    double fillVolume,
    double fillEach,
    double fillWeight,
    int fillBags,
    double padSize) {

  public static Filling of(Brief brief) {
    double diameter = brief.cushion().diameter();
    double radius = diameter / 2;
    FillSpec spec = brief.fill();
    double limit = MylarBalloon.diameter(radius);
    double smaller = diameter - limit;
    double thickness = MylarBalloon.thickness(radius);
    double litres = brief.unit().litres(MylarBalloon.volume(radius));
    double volume = litres * spec.fillFraction();
    double each = volume * spec.fillDensity();
    double weight = each * brief.cushion().quantity();
    return new Filling(
        radius,
        limit,
        thickness,
        litres,
        smaller,
        diameter - spec.fillFraction() * smaller,
        spec.fillFraction() * thickness,
        volume,
        each,
        weight,
        Rounding.up(weight / spec.fillBagWeight()),
        Rounding.upTo(spec.padStep(), diameter + spec.padExtra()));
  }
}
