package frillbook.rows;

import frillbook.brief.Brief;
import frillbook.brief.CushionSpec;
import frillbook.brief.FrillSpec;
import frillbook.measure.Rounding;

/**
 * How far out the frill can lie over the next ring. A free edge that lies x further out than its
 * ring of radius r goes round 2π(r + x) and has 2πr × fullness to do it with: x is at most r ×
 * (fullness − 1), and at most the frill's height.
 *
 * @param coverReach at the end of the second ring; those further out reach as far or further
 */
public record Cover(double coverReach) {
  private static final int SECOND = 2;

  public static Cover of(Brief brief, RowSizes sizes) {
    FrillSpec frill = brief.frill();
    double longest = sizes.radius(brief.cushion(), SECOND) * (frill.fullness() - 1);
    return new Cover(Math.min(frill.frillHeight(), longest));
  }

  /** Whether no base shows between the second ring, if there is one, and the last. */
  public boolean covers(CushionSpec cushion, RowSizes sizes) {
    return sizes.ringCount(cushion) < SECOND
        || Rounding.settle(coverReach - cushion.ringSpacing()) >= 0;
  }

  /** Fullness seen at the free edge of a frill that lies flat outside a ring of {@code radius}. */
  static double edgeFullness(FrillSpec frill, double radius) {
    return frill.fullness() * radius / (radius + frill.frillHeight());
  }
}
