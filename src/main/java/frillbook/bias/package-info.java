/**
 * Strips at 45° to the selvage, with discs in the corners and in bands.
 *
 * <p>Lengths are in the unit of the brief; places of cut lines are measured along the edge. A line
 * at 0 lies in the corner itself.
 */
package frillbook.bias;
