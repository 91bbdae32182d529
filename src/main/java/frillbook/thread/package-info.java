/**
 * Seams, and the thread they take.
 *
 * <p>Lengths of fabric are in the unit of the brief, of seams and thread in metres. A seam of 0 m
 * is not sewn.
 */
package frillbook.thread;
