package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.brief.LookSpec;
import frillbook.grains.FrillCutting;
import frillbook.rows.Rings;
import frillbook.strip.StripLength;
import java.util.Optional;

/**
 * One look a client may choose.
 *
 * @param look empty for a choice that is left out
 * @param made what it comes to; none where it cannot be made
 * @param search for its fabric
 */
record Candidate(Optional<LookSpec> look, Optional<Made> made, ChoiceSearch search) {

  /**
   * A look that can be made. Lengths are in the unit of the brief.
   *
   * @param rings of one cushion
   * @param stitched length of its rows
   * @param flat length of its strip before gathering
   * @param fabric frill fabric to buy for the order
   * @param used of that, after washing, by strips and matching discs
   */
  record Made(int rings, double stitched, double flat, double fabric, double used) {
    static Made of(Rings rings, StripLength strip, double fabric, double used) {
      return new Made(rings.ringCount(), rings.stitchedLength(), strip.flatLength(), fabric, used);
    }
  }

  /** The look of the brief itself, which {@code order} has planned. */
  static Candidate own(PlannedOrder order) {
    Made made =
        Made.of(order.rings(), order.strip(), order.cut().buyLength(), order.frillUsedLength());
    return new Candidate(Optional.of(order.brief().look()), Optional.of(made), ChoiceSearch.none());
  }

  /** {@code brief} with another {@code look}, if there is one. */
  static Candidate of(Brief brief, Optional<LookSpec> look) {
    return look.map(other -> of(brief, other))
        .orElseGet(() -> new Candidate(look, Optional.empty(), ChoiceSearch.none()));
  }

  private static Candidate of(Brief brief, LookSpec look) {
    SizedBrief sized = SizedBrief.of(brief.with(look));
    Sizes sizes = Sizes.of(sized);
    Checks checks = Checks.of(sized.brief(), sizes);
    return look.isGathered()
            && checks.rowsFit()
            && checks.ringsClearInset()
            && checks.orderIsWorkable()
        ? searched(sized, sizes)
        : of(look);
  }

  /** What cannot be made. */
  private static Candidate of(LookSpec look) {
    Optional<LookSpec> wanted = Optional.of(look);
    return new Candidate(wanted, Optional.empty(), ChoiceSearch.none());
  }

  private static Candidate searched(SizedBrief sized, Sizes sizes) {
    Brief brief = sized.brief();
    Grain grain = brief.fabric().grain();
    Rings rings = Rings.of(brief, sized.rows());
    StripLength strip = StripLength.of(brief, rings.stitchedLength());
    FrillCutting cutting = sized.cuttingOf(strip.joinedNeed());
    ChoiceSearch search = ChoiceSearch.of(cutting, sizes.starts(), grain, rings, strip);
    double used = search.order().orElseThrow().usedLength();
    Optional<Made> made = search.bought().map(b -> Made.of(rings, strip, b.buyLength(), used));
    return new Candidate(Optional.of(brief.look()), made, search);
  }
}
