package frillbook.plan;

import frillbook.brief.LookSpec;
import frillbook.materials.Rebilling;
import frillbook.measure.Rounding;
import frillbook.money.LookPrices;
import frillbook.money.Price;
import frillbook.naming.Coded;
import frillbook.naming.Prefixed;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

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
  public record Look(double choiceFullness, double choiceSpacing, double choiceCover) {
    LookSpec spec() {
      return new LookSpec(choiceFullness, choiceSpacing);
    }
  }

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

  /**
   * Why it wants a second look beside {@code plan}: 0 for no reason, 1 where it cannot be sewn, 2
   * where {@code words} contradict its figures, 3 where it is flatter and dearer, or fuller and
   * cheaper.
   */
  int doubt(ChoiceRow plan, String words, double stitchInset) {
    if (look.isEmpty()) {
      return 0;
    } else if (!look.get().spec().isGathered() || !look.get().spec().clears(stitchInset)) {
      return 1;
    }
    double more = look.get().choiceFullness() - plan.look().orElseThrow().choiceFullness();
    if (says(words, "flatter") && more >= 0 || says(words, "fuller") && more <= 0) {
      return 2;
    }
    double dearer = Rounding.settle((price() - plan.price()) * Math.signum(more));
    return dearer < 0 ? 3 : 0;
  }

  private static boolean says(String words, String word) {
    return words.toLowerCase(Locale.ROOT).contains(word);
  }

  /** As it stands beside estimates of other looks; empty for a choice that is left out. */
  Optional<LookPrices.Offered> offered() {
    double price = price();
    OptionalDouble asked = Double.isNaN(price) ? OptionalDouble.empty() : OptionalDouble.of(price);
    return look.map(of -> new LookPrices.Offered(choiceNo, of.spec(), asked));
  }

  /** Of one; NaN where there is none. */
  private double price() {
    return figures.flatMap(Figures::asked).map(Asked::choicePriceEach).orElse(Double.NaN);
  }

  private static Fits fits(Candidate candidate) {
    if (candidate.look().isEmpty()) {
      return Fits.LEFT_OUT;
    }
    return candidate.made().isPresent() ? Fits.FITS : Fits.FAILS;
  }
}
