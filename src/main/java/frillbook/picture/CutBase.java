package frillbook.picture;

import frillbook.discs.BasePlaces;

/**
 * The base fabric as it is cut; lengths in the unit of the brief.
 *
 * @param places of the pieces
 * @param length left of the bought length, washed and its ends straightened, of each width that is
 *     sewn to others
 * @param width usable width, of all of them
 */
public record CutBase(BasePlaces places, double length, double width) {}
