package frillbook.plan;

import frillbook.brief.LengthUnit;

/**
 * Cloth in the words of the shop.
 *
 * @param frillClothOrder frill cloth to ask for, in yards or metres
 * @param baseClothOrder cloth for bases and backs, in yards or metres
 */
public record Shopping(double frillClothOrder, double baseClothOrder) {

  static Shopping of(LengthUnit unit, double frillLength, double baseLength) {
    double perLong = unit.unitsPerLong();
    return new Shopping(frillLength / perLong, baseLength / perLong);
  }
}
