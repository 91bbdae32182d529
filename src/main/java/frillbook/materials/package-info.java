/**
 * What the order needs, buys and is charged for, and what a cushion weighs.
 *
 * <p>Lengths are in the unit of the brief, weights in grams. An amount of 0 is not bought.
 */
package frillbook.materials;
