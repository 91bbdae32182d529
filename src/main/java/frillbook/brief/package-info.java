/**
 * Everything a maker decides.
 *
 * <p>Lengths are in the unit of the brief, inches or centimetres. 0 means none of it: no gap, no
 * overlap, no selvage.
 */
package frillbook.brief;
