/**
 * Cost, price and the lowest price; the one place where money is rounded.
 *
 * <p>Sums are in the currency of the brief. A rate of 0 charges nothing.
 */
package frillbook.money;
