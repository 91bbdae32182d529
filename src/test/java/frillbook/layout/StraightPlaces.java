package frillbook.layout;

import frillbook.brief.Grain;
import frillbook.discs.DiscSizes;
import frillbook.straight.LaneRow;
import frillbook.straight.LaneStrip;
import frillbook.straight.StraightPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where straight strips and discs lie: full strips side by side, lines of discs against the last of
 * them, shorter strips beside the discs at the far end of their lanes.
 *
 * <p>Two discs may lie at either end of the strips: there side by side, or the other at the far
 * selvage of a fabric {@code width} wide.
 *
 * <p>Places are first found by {@code run}, along the strips, and {@code stack}, across them.
 */
record StraightPlaces(Grain grain, StraightPlan plan, double width, double stripWidth) {

  List<PlacedStrip> strips(List<LaneRow> lanes) {
    List<PlacedStrip> strips = new ArrayList<>();
    for (int i = 0; i < plan.full(); i++) {
      strips.add(strip(i, plan.stripLength(), plan.stripLength(), true));
    }
    for (LaneRow row : lanes) {
      LaneStrip lane = grain == Grain.LENGTHWISE ? row.lengthwise() : row.crosswise();
      if (lane.piece() > 0) {
        double end = plan.stripLength() - lane.after();
        strips.add(strip(plan.full() + row.lane().laneNo() - 1, end, lane.piece(), false));
      }
    }
    return strips;
  }

  private PlacedStrip strip(int lane, double end, double length, boolean full) {
    double start = end - length;
    double low = lane * stripWidth;
    double high = low + stripWidth;
    List<Point> corners = List.of(at(start, low), at(end, low), at(end, high), at(start, high));
    return new PlacedStrip(corners, length, full, false, false);
  }

  List<PlacedDisc> discs(DiscSizes sizes) {
    double diameter = sizes.baseCutDiameter();
    return IntStream.range(0, sizes.matchingDiscCount())
        .mapToObj(i -> new PlacedDisc(centre(i, diameter), diameter))
        .toList();
  }

  private Point centre(int disc, double diameter) {
    double near = plan.full() * stripWidth + diameter / 2;
    if (disc == 1 && (plan.isApart() || plan.isZigzag())) {
      return at(plan.stripLength() - diameter / 2, plan.isApart() ? near : width - diameter / 2);
    }
    int line = disc / plan.perLine();
    int inLine = disc % plan.perLine();
    return at((inLine + 0.5) * diameter, near + line * diameter);
  }

  private Point at(double run, double stack) {
    return grain == Grain.LENGTHWISE ? new Point(run, stack) : new Point(stack, run);
  }
}
