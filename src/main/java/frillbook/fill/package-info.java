/**
 * The filled cushion, between flat and the Mylar balloon.
 *
 * <p>Lengths are in the unit of the brief, filling in grams. 0 filling leaves the cushion flat.
 */
package frillbook.fill;
