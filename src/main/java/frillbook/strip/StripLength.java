package frillbook.strip;

import frillbook.brief.Brief;

/**
 * How long the joined strip is before gathering.
 *
 * @param flatLength for one cushion: stitched length × fullness + end allowance
 * @param orderFlatLength for all cushions of the order, joined as one run and cut apart
 */
public record StripLength(double flatLength, double orderFlatLength) {

  public static StripLength of(Brief brief, double stitchedLength) {
    double flat = stitchedLength * brief.frill().fullness() + brief.frill().endAllowance();
    return new StripLength(flat, flat * brief.cushion().quantity());
  }
}
