package frillbook.brief;

/**
 * A material of the maker's own, in whatever it is counted.
 *
 * @param needed for the whole order; 0 where there is none
 * @param step it is sold in whole numbers of these, above 0
 */
public record ExtraSpec(double needed, double step) {}
