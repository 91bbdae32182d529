package frillbook.strip;

import frillbook.brief.Brief;
import frillbook.measure.Rounding;
import frillbook.rows.GatherParts;
import frillbook.rows.Rings;

/**
 * What is looked at while gathering and sewing, in the unit of the brief.
 *
 * @param halfwayRing the ring after which the strip mark is read half-way: 6 of 11
 * @param halfwayMark strip used by the end of that ring
 * @param gatherStart from the end of the strip to where its first part begins
 * @param flatPart between gathering marks on the strip
 * @param markedPart between gathering marks along the line drawn on the base
 */
public record SewingMarks(
    int halfwayRing,
    double halfwayMark,
    double gatherStart,
    GatherParts parts,
    double flatPart,
    double markedPart) {

  public static SewingMarks of(Brief brief, Rings rings) {
    int half = Math.max(1, Rounding.up(rings.ringCount() / 2.0));
    GatherParts parts = GatherParts.of(brief, rings);
    return new SewingMarks(
        half,
        rings.rings().get(half - 1).runningFlat(),
        brief.frill().endAllowance() / 2,
        parts,
        parts.stitchedPart() * brief.frill().fullness(),
        parts.stitchedPart() * brief.base().markedGrowth());
  }
}
