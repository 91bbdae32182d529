package frillbook.discs;

import frillbook.brief.Brief;
import frillbook.cutting.Fabric;
import frillbook.measure.Rounding;

/**
 * How wide the fabric for bases and backs is when they are laid on it. One that is narrower than a
 * base is sewn together of several widths first: 53 in, with seams of 1/2 in, are 105 in in two.
 *
 * @param baseWidths sewn side by side; 1 where a base fits
 * @param baseUsableWidth of all of them
 */
public record BaseWidth(int baseWidths, double baseUsableWidth) {

  /** That of {@code fabric}, which is wider than a seam takes. */
  public static BaseWidth of(Brief brief, DiscSizes sizes, Fabric fabric) {
    double widest = Math.max(sizes.baseCutDiameter(), sizes.backCutDiameter());
    double seam = 2 * brief.base().seamAllowance();
    double each = fabric.usableWidth() - seam;
    int widths = Math.max(1, Rounding.up((widest - seam) / each));
    return new BaseWidth(widths, seam + widths * each);
  }

  /** Seams between the widths of {@code usable} fabric: three widths of 90 have two of 30. */
  public double seamLength(double usable) {
    return (baseWidths - 1) * usable / baseWidths;
  }
}
