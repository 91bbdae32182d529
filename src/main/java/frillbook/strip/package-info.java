/**
 * Cross-section and length of the strip, and what a join of two strips takes.
 *
 * <p>Lengths are in the unit of the brief. An allowance of 0 is a raw edge.
 */
package frillbook.strip;
