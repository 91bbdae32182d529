/**
 * What is over when everything is cut, and how long a table the cutting takes.
 *
 * <p>Lengths are in the unit of the brief. 0 means that nothing is left there.
 */
package frillbook.offcut;
