package frillbook.picture;

import frillbook.discs.BasePlaces;

/**
 * The base fabric as it is cut; lengths in the unit of the brief.
 *
 * @param places of the pieces
 * @param length left of the bought length, washed and its ends straightened
 * @param width usable width
 */
public record CutBase(BasePlaces places, double length, double width) {}
