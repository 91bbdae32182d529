package frillbook.rows;

import frillbook.brief.Brief;
import frillbook.brief.CushionSpec;
import frillbook.brief.CushionSpec.MarkingMethod;
import frillbook.brief.RowStyle;
import frillbook.measure.LengthUnit;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The line as it is drawn on the base, larger than planned by what sewing will draw it in, and what
 * each way of drawing a spiral needs.
 *
 * @param markedGrowth marked over planned
 * @param markedOuterRadius where the line ends
 * @param markedFirstRadius where it begins
 * @param markedSpacing from turn to turn
 * @param pegDiameter of a peg that takes up one marked spacing of string in a turn
 * @param stringLength from its rim to the pencil that begins at the outer radius
 * @param compassStep between the two centres, half a spacing
 * @param compassRadius of the first half circle, a quarter of a spacing more than where it begins
 * @param spokes the turns listed; none for a line drawn in another way
 */
public record MarkedLine(
    double markedGrowth,
    double markedOuterRadius,
    double markedFirstRadius,
    double markedSpacing,
    double pegDiameter,
    double stringLength,
    double compassStep,
    double compassRadius,
    List<SpokeRow> spokes) {
  private static final int SIXTEENTHS = 16;

  private static final int MILLIMETRES = 10;

  public static MarkedLine of(Brief brief, RowSizes sizes, double turns) {
    double growth = brief.base().markedGrowth();
    double outer = sizes.outerRadius() * growth;
    double first = sizes.firstRadius() * growth;
    double spacing = brief.cushion().ringSpacing() * growth;
    double peg = spacing / Math.PI;
    int parts = brief.unit() == LengthUnit.INCH ? SIXTEENTHS : MILLIMETRES;
    int listed = isSpoked(brief.cushion()) ? Math.min(Rounding.up(turns), SpokeRow.MOST) : 0;
    List<SpokeRow> rows =
        IntStream.rangeClosed(1, listed)
            .mapToObj(turn -> SpokeRow.of(turn, first, spacing, outer, parts))
            .toList();
    return new MarkedLine(
        growth,
        outer,
        first,
        spacing,
        peg,
        Math.sqrt(outer * outer - peg * peg / 4),
        spacing / 2,
        first + spacing / 4,
        rows);
  }

  private static boolean isSpoked(CushionSpec cushion) {
    return cushion.rowStyle() == RowStyle.SPIRAL && cushion.markingMethod() == MarkingMethod.SPOKES;
  }
}
