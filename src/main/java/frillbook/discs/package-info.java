/**
 * Bases, backs and matching discs, and the fabric of the first two.
 *
 * <p>Lengths are in the unit of the brief. A height of 0 is that of a back in one disc.
 */
package frillbook.discs;
