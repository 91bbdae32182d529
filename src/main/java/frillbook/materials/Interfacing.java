package frillbook.materials;

import frillbook.brief.Brief;
import frillbook.brief.MaterialSpec;
import frillbook.discs.DiscSizes;
import frillbook.measure.Rounding;

/**
 * Interfacing for the whole order, cut as discs of the base's size in straight rows. One narrower
 * than a disc is laid edge to edge in several widths.
 *
 * @param interfacingCount discs; 0 where nothing is interfaced
 * @param interfacingPerRow side by side, at least 1; 1 where nothing is interfaced
 * @param interfacingWidths to a disc; 1 where a disc fits
 * @param interfacingLength in the unit of the brief
 */
public record Interfacing(
    int interfacingCount, int interfacingPerRow, int interfacingWidths, double interfacingLength) {

  public static Interfacing of(Brief brief, DiscSizes discs) {
    MaterialSpec spec = brief.materials();
    double disc = discs.baseCutDiameter();
    int count = brief.cushion().quantity() * spec.interfaced().discs();
    int perRow = count == 0 ? 1 : Math.max(1, Rounding.down(spec.interfacingWidth() / disc));
    int widths = count == 0 ? 1 : Rounding.up(disc / spec.interfacingWidth());
    int rows = Rounding.up((double) count / perRow) * widths;
    return new Interfacing(count, perRow, widths, rows * disc);
  }
}
