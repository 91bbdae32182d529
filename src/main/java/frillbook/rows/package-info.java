/**
 * The rows the frill is sewn in: a spiral or separate rings.
 *
 * <p>Lengths are in the unit of the brief, angles in radians. A centre gap of 0 begins the spiral
 * at the centre itself.
 */
package frillbook.rows;
