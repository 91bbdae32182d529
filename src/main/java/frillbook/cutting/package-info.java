/**
 * What is cut from one fabric, whatever the grain: pieces, tallies, and the search for the shortest
 * length.
 *
 * <p>Lengths are in the unit of the brief. A strip or a buy length of 0 means that there is none.
 */
package frillbook.cutting;
