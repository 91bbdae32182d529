/**
 * Units of length, the currencies, tolerances, roundings and the outline: what every number here is
 * measured with.
 *
 * <p>A length carries no unit of its own; {@link frillbook.measure.LengthUnit} turns one into
 * metres.
 */
package frillbook.measure;
