package frillbook.fill;

import frillbook.brief.Brief;
import frillbook.brief.FillSpec;
import frillbook.measure.Rounding;

/**
 * What goes into the cushions and what it does to their size. Per cushion unless said otherwise;
 * lengths in the unit of the brief.
 *
 * @param limitVolume in litres, filled to the limit: flat 45 cm, 13.9 L
 * @param fillEach in grams
 * @param fillWeight in grams, for all cushions
 * @param fillBags to buy for all cushions
 * @param padSize of a ready pad that fills the cover: the flat size and the extra, rounded up to a
 *     size that is sold
 */
public record Filling(
    FilledShape shape,
    double limitVolume,
    double fillEach,
    double fillWeight,
    int fillBags,
    double padSize) {

  public static Filling of(Brief brief) {
    double diameter = brief.cushion().diameter();
    FillSpec spec = brief.fill();
    double litres = brief.unit().litres(MylarBalloon.volume(diameter / 2));
    double each = litres * spec.fillFraction() * spec.fillDensity();
    double weight = each * brief.cushion().quantity();
    return new Filling(
        FilledShape.of(diameter, spec.fillFraction()),
        litres,
        each,
        weight,
        Rounding.up(weight / spec.fillBagWeight()),
        Rounding.upTo(spec.padStep(), diameter + spec.padExtra()));
  }
}
