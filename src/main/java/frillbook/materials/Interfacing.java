package frillbook.materials;

import frillbook.brief.Brief;
import frillbook.brief.MaterialSpec;
import frillbook.discs.DiscSizes;
import frillbook.measure.Rounding;

/**
 * Interfacing for the whole order, cut as discs of the base's size in straight rows.
 *
 * @param interfacingCount discs; 0 where nothing is interfaced
 * @param interfacingPerRow side by side, at least 1; 1 where nothing is interfaced
 * @param interfacingLength in the unit of the brief
 */
public record Interfacing(int interfacingCount, int interfacingPerRow, double interfacingLength) {

  public static Interfacing of(Brief brief, DiscSizes discs) {
    MaterialSpec spec = brief.materials();
    double disc = discs.baseCutDiameter();
    int count = brief.cushion().quantity() * spec.interfaced().discs();
    int perRow = count == 0 ? 1 : Math.max(1, Rounding.down(spec.interfacingWidth() / disc));
    return new Interfacing(count, perRow, Rounding.up((double) count / perRow) * disc);
  }
}
