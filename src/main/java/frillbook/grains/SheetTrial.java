package frillbook.grains;

import frillbook.straight.Sheet;
import frillbook.straight.StraightTrial;

/**
 * A straight trial and the cloth it sees, in either direction.
 *
 * @param sheet the trial's length and the cloth's usable width, turned as the strips lie
 */
public record SheetTrial(StraightTrial trial, Sheet sheet) {}
