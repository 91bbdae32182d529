package frillbook.rows;

import frillbook.brief.Brief;
import frillbook.brief.CushionSpec;
import frillbook.brief.RowStyle;
import frillbook.measure.Outline;
import frillbook.measure.Rounding;
import java.util.ArrayList;
import java.util.List;

/**
 * The sewn rows of one cushion.
 *
 * @param turnCount of the spiral, the last one in part, settled; or circles
 * @param ringCount turns begun and the closing ring, or circles
 * @param ringPitch how far a spiral climbs in a radian
 * @param startAngle turned from the centre where the rows begin, in radians
 * @param startLength of the spiral inside the centre gap, which is not sewn; 0 for rings
 * @param endLength of a spiral from the very centre to the outer radius
 * @param circlesLength of all separate rings, laps included; 0 for a spiral
 * @param closingLength of the ring that closes a spiral at the outer radius; 0 without one
 * @param stitchedLength what a string laid along the sewn line would measure
 * @param areaRuleLength quick check: area of the ring-covered band over the spacing, and the
 *     closing ring
 */
public record Rings(
    double turnCount,
    int ringCount,
    double ringPitch,
    double startAngle,
    double startLength,
    double endLength,
    double circlesLength,
    double closingLength,
    double stitchedLength,
    double areaRuleLength,
    List<Ring> rings) {

  /** The rows of {@code brief}, whose {@code sizes} say that they fit. */
  public static Rings of(Brief brief, RowSizes sizes) {
    CushionSpec cushion = brief.cushion();
    int count = sizes.ringCount(cushion);
    double turns = turns(cushion, sizes);
    double start = isSpiral(cushion) ? spiral(cushion).lengthTo(cushion.centreGap()) : 0;
    double end = spiral(cushion).lengthTo(sizes.outerRadius());
    double circles = isSpiral(cushion) ? 0 : circles(cushion, sizes, count);
    double closing = cushion.isClosed() ? Outline.around(2 * sizes.outerRadius()) : 0;
    return new Rings(
        turns,
        count,
        cushion.ringSpacing() / (2 * Math.PI),
        spiral(cushion).angleAt(cushion.centreGap()),
        start,
        end,
        circles,
        closing,
        (isSpiral(cushion) ? end - start : circles) + closing,
        areaRule(cushion, sizes) + closing,
        rings(brief, sizes, count, start, closing));
  }

  /** Turns and the closing ring, or circles: how often the needle goes round. */
  public double sewnTurns() {
    return closingLength > 0 ? turnCount + 1 : turnCount;
  }

  /** The ring, from 1, that is sewn after so many {@code turns}. */
  public int ringAfter(double turns) {
    boolean closing = Rounding.settle(turns - turnCount) > 0;
    return closing ? ringCount : Math.min(ringCount, Rounding.down(turns) + 1);
  }

  /** How often {@code ringNo} goes round the centre: a separate ring once and its lap besides. */
  public double timesRound(int ringNo) {
    Ring ring = rings.get(ringNo - 1);
    return circlesLength > 0 ? ring.ringLength() / Outline.around(2 * ring.ringRadius()) : 1;
  }

  private static double turns(CushionSpec cushion, RowSizes sizes) {
    double turns = (sizes.outerRadius() - sizes.firstRadius()) / cushion.ringSpacing();
    return isSpiral(cushion) ? Rounding.settle(turns) : Rounding.down(turns) + 1;
  }

  private static double circles(CushionSpec cushion, RowSizes sizes, int count) {
    double radii = count * sizes.firstRadius() + cushion.ringSpacing() * count * (count - 1) / 2;
    return Outline.around(2 * radii) + count * cushion.ringLap();
  }

  private static double areaRule(CushionSpec cushion, RowSizes sizes) {
    double outer = sizes.outerRadius();
    double gap = cushion.centreGap();
    return (Outline.area(2 * outer) - Outline.area(2 * gap)) / cushion.ringSpacing();
  }

  private static List<Ring> rings(
      Brief brief, RowSizes sizes, int count, double start, double closing) {
    List<Ring> rings = new ArrayList<>();
    double before = 0;
    for (int ringNo = 1; ringNo <= count; ringNo++) {
      double radius = sizes.radius(brief.cushion(), ringNo);
      double running =
          running(brief.cushion(), radius, before, start) + (ringNo == count ? closing : 0);
      double mark = brief.frill().endAllowance() / 2 + running * brief.frill().fullness();
      double marked = radius * brief.base().markedGrowth();
      double edge = Cover.edgeFullness(brief.frill(), radius);
      rings.add(new Ring(ringNo, radius, marked, running - before, running, mark, edge));
      before = running;
    }
    return List.copyOf(rings);
  }

  private static double running(CushionSpec cushion, double radius, double before, double start) {
    return isSpiral(cushion)
        ? spiral(cushion).lengthTo(radius) - start
        : before + Outline.around(2 * radius) + cushion.ringLap();
  }

  private static Spiral spiral(CushionSpec cushion) {
    return new Spiral(cushion.ringSpacing());
  }

  private static boolean isSpiral(CushionSpec cushion) {
    return cushion.rowStyle() == RowStyle.SPIRAL;
  }
}
