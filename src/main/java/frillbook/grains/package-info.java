/**
 * The three grains beside each other, each with its shortest length.
 *
 * <p>Lengths are in the unit of the brief, lengths that are tried in buy steps. 0 steps is a length
 * that yields nothing.
 */
package frillbook.grains;
