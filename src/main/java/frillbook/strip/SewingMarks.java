package frillbook.strip;

import frillbook.brief.Brief;
import frillbook.measure.Rounding;
import frillbook.rows.Rings;

/**
 * What is looked at while gathering and sewing, in the unit of the brief.
 *
 * @param halfwayRing the ring after which the strip mark is read half-way: 6 of 11
 * @param halfwayMark strip used by the end of that ring
 * @param flatEighth between gathering marks on the strip
 * @param markedEighth between gathering marks along the line drawn on the base
 */
public record SewingMarks(
    int halfwayRing, double halfwayMark, double flatEighth, double markedEighth) {

  public static SewingMarks of(Brief brief, Rings rings, StripLength strip) {
    int half = Math.max(1, Rounding.up(rings.ringCount() / 2.0));
    return new SewingMarks(
        half,
        rings.rings().get(half - 1).runningFlat(),
        strip.flatLength() / 8,
        rings.stitchedLength() / 8 * brief.base().markedGrowth());
  }
}
