/**
 * Tasks, their rates and the hours they come to.
 *
 * <p>Amounts are in metres or pieces, rates in minutes for each, totals in hours. A rate of 0
 * leaves a task out.
 */
package frillbook.time;
