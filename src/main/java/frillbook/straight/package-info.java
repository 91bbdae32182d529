/**
 * Strips along or across the fabric, and discs in lines beside them.
 *
 * <p>Lengths are in the unit of the brief. 0 discs in a line means that none are cut.
 */
package frillbook.straight;
