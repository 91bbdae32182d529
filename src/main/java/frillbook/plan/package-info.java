/**
 * All of it together, the three choices, under the names of the workbook.
 *
 * <p>Lengths are in the unit of the brief. What could not be planned is an empty {@code Optional},
 * not 0.
 */
package frillbook.plan;
