package frillbook.layout;

import frillbook.brief.Grain;
import frillbook.discs.DiscSizes;
import frillbook.straight.LaneRow;
import frillbook.straight.LaneStrip;
import frillbook.straight.StraightPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where straight strips and discs lie: full strips side by side, lines of discs against the last of
 * them, shorter strips beside the discs at the far end of their lanes.
 *
 * <p>Several full strips may lie end to end in a lane, up to its far end.
 *
 * <p>Two discs may lie at either end of the strips: there side by side, or the other at the far
 * selvage of a fabric {@code width} wide and {@code run} long along the strips.
 *
 * <p>Places are first found by {@code run}, along the strips, and {@code stack}, across them.
 */
record StraightPlaces(Grain grain, StraightPlan plan, double run, double width, double stripWidth) {

  List<PlacedStrip> strips(List<LaneRow> lanes) {
    List<PlacedStrip> strips = new ArrayList<>();
    for (int i = 0; i < plan.full(); i++) {
      for (int along = 1; along <= plan.perLane(); along++) {
        double end = run - (plan.perLane() - along) * plan.stripLength();
        strips.add(strip(i, end, plan.stripLength(), true));
      }
    }
    for (int lane = 1; lane <= plan.laneCount(); lane++) {
      int more = lane <= plan.whole() ? plan.moreWhole() : plan.moreLast();
      for (int along = 0; along < more; along++) {
        double end = run - along * plan.stripLength();
        strips.add(strip(plan.full() + lane - 1, end, plan.stripLength(), true));
      }
    }
    for (LaneRow row : lanes) {
      shorter(row).ifPresent(strips::add);
    }
    return strips;
  }

  private Optional<PlacedStrip> shorter(LaneRow row) {
    LaneStrip lane = grain == Grain.LENGTHWISE ? row.lengthwise() : row.crosswise();
    int number = row.lane().laneNo();
    int more = number <= plan.whole() ? plan.moreWhole() : plan.moreLast();
    double end = run - lane.after() - more * plan.stripLength();
    return lane.piece() == 0
        ? Optional.empty()
        : Optional.of(strip(plan.full() + number - 1, end, lane.piece(), false));
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
      return at(run - diameter / 2, plan.isApart() ? near : width - diameter / 2);
    }
    int line = disc / plan.perLine();
    int inLine = disc % plan.perLine();
    return at((inLine + 0.5) * diameter, near + line * diameter);
  }

  private Point at(double run, double stack) {
    return grain == Grain.LENGTHWISE ? new Point(run, stack) : new Point(stack, run);
  }
}
