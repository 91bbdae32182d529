package frillbook.brief;

/**
 * How heavy the fabrics are, in grams for a square metre; 1 oz/yd² is 33.90575 g/m².
 *
 * @param frillFabricWeight of frill and matching discs
 * @param baseFabricWeight of base and back
 */
public record WeightSpec(
    double frillFabricWeight, double baseFabricWeight, double interfacingWeight) {}
