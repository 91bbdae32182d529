package frillbook.picture;

import frillbook.discs.BasePlaces;

/**
 * The base fabric as it is cut; lengths in the unit of the brief.
 *
 * @param places of the pieces
 * @param length left of the bought length after washing
 * @param width usable width
 */
public record CutBase(BasePlaces places, double length, double width) {}
