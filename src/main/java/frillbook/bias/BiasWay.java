package frillbook.bias;

import frillbook.measure.Rounding;

/**
 * What differs between the ways of laying discs on the rectangle that bias strips are cut from.
 *
 * @param nearReach where the first cut line lies at least, from the near corner
 * @param farReach the same from the far corner
 * @param most shortened strips considered in each corner
 * @param lined whether discs lie in a line along a long edge
 * @param rows strips that are cut past that line
 */
record BiasWay(double nearReach, double farReach, int most, boolean lined, int rows) {

  /** {@code discs} in the right-angled corners. */
  static BiasWay corners(BiasCutting cutting, int discs) {
    return new BiasWay(
        cutting.reach(discs >= 1), cutting.reach(discs >= 2), BiasCutting.MOST, false, 0);
  }

  static BiasWay line(BiasCutting cutting) {
    double tip = cutting.reach(false);
    int rows = cutting.setting().lineRows();
    return new BiasWay(tip, tip, BiasCutting.MOST_WITH_LINE, true, rows);
  }

  /**
   * The first cut line. Where discs lie in a line, one of the lines behind it must touch the first
   * of them, at {@code grown}.
   */
  double near(double waist, double grown, double step) {
    double least = Math.max(nearReach, waist - most * step);
    return lined ? grown - Math.max(0, Rounding.down((grown - least) / step)) * step : least;
  }

  double farLeast(double waist, double step) {
    return Math.max(farReach, waist - most * step);
  }
}
