package frillbook.offcut;

import frillbook.measure.Rounding;

/**
 * A rectangle that is left in one piece.
 *
 * @param leftoverPlace where it lies
 * @param leftoverRun its extent along straight strips; on the bias along the selvage
 * @param leftoverStack its extent at right angles to that
 * @param leftoverArea settled, so that every program finds the same one largest
 */
public record Leftover(
    Place leftoverPlace, double leftoverRun, double leftoverStack, double leftoverArea) {

  /** Nothing where either extent is negative. */
  static Leftover of(Place place, double run, double stack) {
    double along = Math.max(0, run);
    double aside = Math.max(0, stack);
    // Areas of marked sizes often lie just between two settled ones.
    double area = Rounding.settle(along * aside + Rounding.TINY / 10);
    return new Leftover(place, along, aside, area);
  }
}
