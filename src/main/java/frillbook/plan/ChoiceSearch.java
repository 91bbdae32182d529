package frillbook.plan;

import frillbook.bias.BiasTrial;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.SearchReach;
import frillbook.grains.FrillCutting;
import frillbook.grains.GrainSearch;
import frillbook.grains.GrainStarts;
import frillbook.naming.Prefixed;
import frillbook.rows.Rings;
import frillbook.straight.OwnStrips;
import frillbook.straight.StraightTrial;
import frillbook.strip.StripLength;
import java.util.List;
import java.util.Optional;

/**
 * How much frill fabric another look takes, in the grain of the brief. Lengths are in its unit.
 *
 * @param rowsFit whether it is gathered, a ring fits, none lies on the stitching before it and the
 *     order is not too large to search
 * @param order what is to be cut; none where no ring fits or the order is too large to search
 * @param found whether a length of fabric was found
 * @param bought none where none was found
 * @param straightTrials lengths tried across or along the fabric; none for bias
 * @param biasTrials lengths tried on the bias; none for straight grain
 */
public record ChoiceSearch(
    boolean rowsFit,
    Optional<Order> order,
    boolean found,
    Optional<Bought> bought,
    @Prefixed("straight") List<StraightTrial> straightTrials,
    @Prefixed("bias") List<BiasTrial> biasTrials) {

  /**
   * @param rings of one cushion
   * @param ringPitch how far a spiral climbs in a radian
   * @param stitched length of the rows of one cushion
   * @param flat length of the strip of one cushion
   * @param orderFlat of the joined strips of all cushions
   * @param need what the strips of that run must add up to, spares left out
   * @param leastLength area of run and discs over the usable width
   * @param usedLength the same as cut: bias strips that stretch are cut shorter than they join
   * @param reach of the search
   * @param own lengthwise strips where every cushion has its own
   * @param cushion the strips of one such cushion on straight grain
   */
  public record Order(
      int rings,
      double ringPitch,
      double stitched,
      double flat,
      double orderFlat,
      double need,
      double leastLength,
      double usedLength,
      SearchReach reach,
      OwnStrips own,
      CushionStrips cushion) {}

  /**
   * @param buyLength frill fabric to buy
   */
  public record Bought(double buyLength) {}

  /** Nothing to search for. */
  static ChoiceSearch none() {
    return new ChoiceSearch(false, Optional.empty(), false, Optional.empty(), List.of(), List.of());
  }

  static ChoiceSearch of(
      FrillCutting cutting, GrainStarts starts, Grain grain, Rings rows, StripLength strip) {
    GrainSearch search = GrainSearch.of(cutting, starts, grain);
    Order order =
        new Order(
            rows.ringCount(),
            rows.ringPitch(),
            rows.stitchedLength(),
            strip.flatLength(),
            strip.joinedNeed(),
            cutting.need(grain),
            cutting.leastLength(),
            cutting.usedLength(grain),
            cutting.reach(starts),
            cutting.lengthwise().own(),
            grain == Grain.LENGTHWISE
                ? cutting.lengthwise().cushion()
                : cutting.crosswise().cushion());
    return new ChoiceSearch(
        true,
        Optional.of(order),
        search.buyLength().isPresent(),
        search.buyLength().map(Bought::new),
        search.straightTrials(),
        search.biasTrials());
  }
}
