package frillbook.fill;

import frillbook.brief.Brief;
import frillbook.measure.Rounding;
import frillbook.rows.RowSizes;

/**
 * How wide the cushion is over its frill, and a carton for one.
 *
 * <p>The frill of the last ring leans out as far as it is high, or as its length allows: at x from
 * its ring, of the radius r, fullness × r goes round a circle of r + x. The ring itself lies no
 * further from the middle than when the cushion is flat, and no further than the filled cushion is
 * wide. So the width over the frill is at most what is said here.
 *
 * @param overallDiameter at most, with the frill spread out
 * @param parcelSide of a square carton, a whole inch or centimetre
 * @param parcelHeight of the cushion at its thickest with the frill on top, likewise
 * @param volumetricWeight in grams: whole pounds or kilograms
 */
public record Parcel(
    double overallDiameter, int parcelSide, int parcelHeight, double volumetricWeight) {

  static Parcel of(Brief brief, FilledShape shape) {
    double half = shape.filledDiameter() / 2;
    double ring = RowSizes.of(brief.cushion()).outerRadius();
    double high = brief.frill().frillHeight();
    double out = Math.min(high, ring * (brief.frill().fullness() - 1));
    double overall = 2 * Math.max(half, Math.min(ring, half) + out);
    int side = Rounding.up(overall);
    int height = Rounding.up(shape.filledThicknessHigh() + high);
    int charged = charged(side, side, height, brief.fill().parcelDivisor());
    return new Parcel(overall, side, height, charged * brief.unit().parcelGrams());
  }

  /** Whole pounds or kilograms for a carton of whole inches or centimetres. */
  static int charged(int length, int width, int height, double divisor) {
    return Rounding.up((double) length * width * height / divisor);
  }
}
