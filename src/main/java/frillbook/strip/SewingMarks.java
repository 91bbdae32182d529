package frillbook.strip;

import frillbook.measure.Rounding;
import frillbook.rows.Rings;

/**
 * What is looked at while gathering and sewing, in the unit of the brief.
 *
 * @param halfwayRing the ring after which the strip mark is read half-way: 6 of 11
 * @param halfwayMark strip used by the end of that ring
 * @param flatEighth between gathering marks on the strip
 * @param stitchedEighth between gathering marks along the sewn line
 */
public record SewingMarks(
    int halfwayRing, double halfwayMark, double flatEighth, double stitchedEighth) {

  public static SewingMarks of(Rings rings, StripLength strip) {
    int half = Math.max(1, Rounding.up(rings.ringCount() / 2.0));
    return new SewingMarks(
        half,
        rings.rings().get(half - 1).runningFlat(),
        strip.flatLength() / 8,
        rings.stitchedLength() / 8);
  }
}
