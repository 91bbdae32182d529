package frillbook.strip;

import frillbook.brief.Brief;

/**
 * How long the joined strip is before gathering.
 *
 * @param flatLength for one cushion: stitched length × fullness + end allowance
 * @param orderFlatLength for all cushions of the order, joined as one run and cut apart
 * @param joinedNeed what all joined strips together must reach; more than that where one is joined
 *     for the whole order
 */
public record StripLength(double flatLength, double orderFlatLength, double joinedNeed) {

  public static StripLength of(Brief brief, double stitchedLength) {
    double flat = stitchedLength * brief.frill().fullness() + brief.frill().endAllowance();
    double order = flat * brief.cushion().quantity();
    return new StripLength(flat, order, order * brief.joinedShare());
  }
}
