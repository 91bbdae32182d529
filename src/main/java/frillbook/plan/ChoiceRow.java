package frillbook.plan;

import frillbook.materials.Rebilling;
import frillbook.money.Price;
import frillbook.naming.Coded;
import frillbook.naming.Prefixed;
import java.util.Optional;

/**
 * One of the three looks set side by side.
 *
 * @param choiceNo 1 is the brief itself
 * @param look empty for a choice that is left out
 * @param choiceFits whether it can be made
 * @param choiceFound whether a length of fabric was found for it
 * @param figures what it comes to; none where it does not fit
 */
public record ChoiceRow(
    int choiceNo,
    Optional<Look> look,
    Fits choiceFits,
    boolean choiceFound,
    Optional<Figures> figures) {

  /** What becomes of a look. */
  public enum Fits implements Coded {
    FITS,
    /** Rows or fabric do not allow it. */
    FAILS,
    LEFT_OUT
  }

  /**
   * @param choiceFullness flat length over stitched length
   * @param choiceSpacing from ring to ring
   * @param choiceCover frill height over ring spacing
   */
  public record Look(double choiceFullness, double choiceSpacing, double choiceCover) {}

  /**
   * What a look comes to. Lengths are in the unit of the brief, except thread; everything but
   * rings, stitched and flat length and the prices for one is for all cushions.
   *
   * @param choiceRings of one cushion
   * @param choiceStitched length of the rows of one cushion
   * @param choiceFlat length of the strip of one cushion
   * @param choiceFabric frill fabric to buy
   * @param choiceStrips strips to cut; an estimate but for the brief itself
   * @param choiceJoins joins; an estimate but for the brief itself
   * @param choiceThread in metres
   * @param choiceHours in hours
   * @param asked what is asked for it; empty where the profit is no possible one
   */
  public record Figures(
      int choiceRings,
      double choiceStitched,
      double choiceFlat,
      double choiceFabric,
      int choiceStrips,
      int choiceJoins,
      double choiceThread,
      double choiceHours,
      @Prefixed("choice") Rebilling.Cost cost,
      Optional<Asked> asked) {}

  /**
   * @param choiceNetEach price of one before tax
   * @param choicePriceEach price of one
   * @param choicePriceTotal price of all
   */
  public record Asked(double choiceNetEach, double choicePriceEach, double choicePriceTotal) {
    static Asked of(Price price) {
      return new Asked(price.netEach(), price.priceEach(), price.priceTotal());
    }
  }

  static ChoiceRow of(int number, Candidate candidate, ChoiceReckoner reckoner) {
    return new ChoiceRow(
        number,
        candidate
            .look()
            .map(of -> new Look(of.fullness(), of.spacing(), reckoner.cover(of.spacing()))),
        fits(candidate),
        candidate.made().isPresent(),
        candidate.made().map(made -> reckoner.figures(number, made)));
  }

  private static Fits fits(Candidate candidate) {
    if (candidate.look().isEmpty()) {
      return Fits.LEFT_OUT;
    }
    return candidate.made().isPresent() ? Fits.FITS : Fits.FAILS;
  }
}
