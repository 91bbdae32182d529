package frillbook.layout;

import frillbook.brief.Grain;
import frillbook.discs.DiscSizes;
import frillbook.straight.LaneRow;
import frillbook.straight.StraightPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where straight strips and discs lie: full strips side by side, lines of discs against the last of
 * them, shorter strips beside the discs at the far end of their lanes.
 *
 * <p>Places are first found by {@code run}, along the strips, and {@code stack}, across them.
 */
record StraightPlaces(Grain grain, StraightPlan plan, double stripWidth) {

  List<PlacedStrip> strips(List<LaneRow> lanes) {
    List<PlacedStrip> strips = new ArrayList<>();
    for (int i = 0; i < plan.full(); i++) {
      strips.add(strip(i, plan.stripLength(), true));
    }
    for (LaneRow row : lanes) {
      double length = (grain == Grain.LENGTHWISE ? row.lengthwise() : row.crosswise()).piece();
      if (length > 0) {
        strips.add(strip(plan.full() + row.lane().laneNo() - 1, length, false));
      }
    }
    return strips;
  }

  private PlacedStrip strip(int lane, double length, boolean full) {
    double start = plan.stripLength() - length;
    double low = lane * stripWidth;
    double high = low + stripWidth;
    List<Point> corners =
        List.of(
            at(start, low),
            at(plan.stripLength(), low),
            at(plan.stripLength(), high),
            at(start, high));
    return new PlacedStrip(corners, length, full, false, false);
  }

  List<PlacedDisc> discs(DiscSizes sizes) {
    double diameter = sizes.baseCutDiameter();
    return IntStream.range(0, sizes.matchingDiscCount())
        .mapToObj(i -> new PlacedDisc(centre(i, diameter), diameter))
        .toList();
  }

  private Point centre(int disc, double diameter) {
    int line = disc / plan.perLine();
    int inLine = disc % plan.perLine();
    return at((inLine + 0.5) * diameter, plan.full() * stripWidth + (line + 0.5) * diameter);
  }

  private Point at(double run, double stack) {
    return grain == Grain.LENGTHWISE ? new Point(run, stack) : new Point(stack, run);
  }
}
