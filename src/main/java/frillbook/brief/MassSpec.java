package frillbook.brief;

/**
 * How heavy the cloths are, in grams for a square metre; 1 oz/yd² is 33.90575 g/m².
 *
 * @param frillClothMass of frill and overlays
 * @param baseClothMass of base and back
 */
public record MassSpec(double frillClothMass, double baseClothMass, double interfacingMass) {}
