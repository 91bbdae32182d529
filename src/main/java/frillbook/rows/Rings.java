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
 * @param ringCount turns begun, or circles
 * @param startAngle turned from the centre where the rows begin, in radians
 * @param endAngle turned from the centre where they end
 * @param startLength of the spiral inside the centre gap, which is not sewn; 0 for rings
 * @param endLength of a spiral from the very centre to the outer radius
 * @param circlesLength of all separate rings, laps included; 0 for a spiral
 * @param stitchedLength what a string laid along the sewn line would measure
 * @param areaRuleLength quick check: area of the ring-covered band over the spacing
 */
public record Rings(
    int ringCount,
    double startAngle,
    double endAngle,
    double startLength,
    double endLength,
    double circlesLength,
    double stitchedLength,
    double areaRuleLength,
    List<Ring> rings) {

  /** The rows of {@code brief}, whose {@code sizes} say that they fit. */
  public static Rings of(Brief brief, RowSizes sizes) {
    CushionSpec cushion = brief.cushion();
    int count = count(cushion, sizes);
    double start = isSpiral(cushion) ? spiral(cushion).lengthTo(cushion.centreGap()) : 0;
    double end = spiral(cushion).lengthTo(sizes.outerRadius());
    double circles = isSpiral(cushion) ? 0 : circles(cushion, sizes, count);
    List<Ring> rings = rings(brief, sizes, count, start);
    return new Rings(
        count,
        spiral(cushion).angleAt(cushion.centreGap()),
        spiral(cushion).angleAt(sizes.outerRadius()),
        start,
        end,
        circles,
        isSpiral(cushion) ? end - start : circles,
        areaRule(cushion, sizes),
        rings);
  }

  /** How often {@code ringNo} goes round the centre: a separate ring once and its lap besides. */
  public double timesRound(int ringNo) {
    Ring ring = rings.get(ringNo - 1);
    return circlesLength > 0 ? ring.ringLength() / Outline.around(2 * ring.ringRadius()) : 1;
  }

  private static int count(CushionSpec cushion, RowSizes sizes) {
    double turns = (sizes.outerRadius() - sizes.firstRadius()) / cushion.ringSpacing();
    return isSpiral(cushion) ? Rounding.up(turns) : Rounding.down(turns) + 1;
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

  private static List<Ring> rings(Brief brief, RowSizes sizes, int count, double start) {
    List<Ring> rings = new ArrayList<>();
    double before = 0;
    for (int ringNo = 1; ringNo <= count; ringNo++) {
      double radius = radius(brief.cushion(), sizes, ringNo);
      double running = running(brief.cushion(), radius, before, start);
      double mark = brief.frill().endAllowance() / 2 + running * brief.frill().fullness();
      double angle = spiral(brief.cushion()).angleAt(radius);
      rings.add(new Ring(ringNo, radius, running - before, running, mark, angle));
      before = running;
    }
    return List.copyOf(rings);
  }

  private static double radius(CushionSpec cushion, RowSizes sizes, int ringNo) {
    return isSpiral(cushion)
        ? Math.min(sizes.outerRadius(), cushion.centreGap() + ringNo * cushion.ringSpacing())
        : sizes.firstRadius() + (ringNo - 1) * cushion.ringSpacing();
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
